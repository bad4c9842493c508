namespace CareSheets.Arrivals;

/// <summary>Why a line of a packing list was taken for an entry.</summary>
public enum NameTaken
{
    /// <summary>The list has the valid name, letter for letter.</summary>
    Exact,

    /// <summary>The list has a name that the entry had before.</summary>
    FormerName,

    /// <summary>The list has a spelling that means the same name and no other.</summary>
    Spelling,

    /// <summary>A person answered for this supplier before.</summary>
    Answered,

    ByHand,
}
