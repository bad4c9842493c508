namespace CareSheets.Regulations;

/// <summary>How much of a list the shop's copy holds, and so what its silence means.</summary>
public enum ListExtent
{
    /// <summary>Every fish that the list names: a species that is not here was not found in it.</summary>
    Whole,

    /// <summary>Some of its names: a species that is not here was not found in this part.</summary>
    Part,

    /// <summary>That there is such a list, and no name of it: nothing can be looked up.</summary>
    None,
}
