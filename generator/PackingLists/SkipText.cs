namespace CareSheets.PackingLists;

/// <summary>Why a row was left out, in words.</summary>
public static class SkipText
{
    public static string Of(SkipReason reason) => reason switch
    {
        SkipReason.Preamble => "before the headings",
        SkipReason.NotFish => "a total, freight or the like",
        SkipReason.NoName => "no name in it",
        SkipReason.Heading => "a heading",
        SkipReason.Remark => "a remark",
        SkipReason.NoSign => "nothing in it tells of fish",
    };
}
