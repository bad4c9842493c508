using System.Collections.Frozen;

namespace CareSheets.Names;

/// <summary>Grammatical gender of a genus, which its adjectives follow (ICZN Code, Art. 30, 31.2).</summary>
public enum Gender
{
    Masculine,
    Feminine,
    Neuter,
}

/// <summary>A genus as genera.csv has it. <see cref="Gender"/> is nothing where it is not settled.</summary>
public sealed record KnownGenus(string Name, Gender? Gender, string Family, string Order);

/// <summary>Genera that are known to exist, whether or not the shop has an entry of them.</summary>
public sealed class GenusTable
{
    private readonly FrozenDictionary<string, KnownGenus> _byName;

    private GenusTable(IEnumerable<KnownGenus> genera) => _byName = genera.ToFrozenDictionary(g => g.Name);

    /// <summary>The table that comes with the program.</summary>
    public static GenusTable Known { get; } = new(DataFile.Rows("genera.csv")
        .Select(row => new KnownGenus(row[0], GenderOf(row[1]), row[2], row[3])));

    public IEnumerable<KnownGenus> All => _byName.Values.OrderBy(g => g.Name, StringComparer.Ordinal);

    public KnownGenus? Find(string genus) => _byName.GetValueOrDefault(genus);

    private static Gender? GenderOf(string letter) => letter switch
    {
        "m" => Gender.Masculine,
        "f" => Gender.Feminine,
        "n" => Gender.Neuter,
        _ => null,
    };
}
