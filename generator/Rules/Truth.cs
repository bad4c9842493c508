namespace CareSheets.Rules;

/// <summary>
/// Whether a condition holds of an entry. What an entry does not state leaves it open, which is neither
/// yes nor no (the strong three-valued logic of Kleene 1938, J. Symbolic Logic 3:150-155).
/// </summary>
public enum Truth
{
    No,
    Open,
    Yes,
}

/// <summary>The connectives: an open part leaves the whole open unless the other parts decide it.</summary>
public static class Connective
{
    public static Truth All(IEnumerable<Truth> parts) => parts.Append(Truth.Yes).Min();

    public static Truth Any(IEnumerable<Truth> parts) => parts.Append(Truth.No).Max();

    public static Truth Not(Truth part) => part switch
    {
        Truth.No => Truth.Yes,
        Truth.Open => Truth.Open,
        Truth.Yes => Truth.No,
    };

    public static Truth Of(bool known) => known ? Truth.Yes : Truth.No;
}
