using CareSheets.Arrivals;

namespace CareSheets.PackingLists;

/// <summary>Why a line was taken, in the word of the arrival's schema.</summary>
public static class NameTakenWord
{
    public static string Of(NameTaken taken) => taken switch
    {
        NameTaken.Exact => "exact",
        NameTaken.FormerName => "former name",
        NameTaken.Spelling => "spelling",
        NameTaken.Answered => "answered",
        NameTaken.ByHand => "by hand",
    };
}
