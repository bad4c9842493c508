namespace CareSheets.Pages.Mates;

/// <summary>Who can live with a species: lists for its page, the best first, and where the rest is told.</summary>
public sealed record MateLists(
    MateList Suits, MateList WithCare, MateList Apart, string RestHref, string RestLabel);

/// <param name="Verdict">Its number, for the sign beside the words.</param>
/// <param name="Count">How many, in words.</param>
/// <param name="First">The best, with why; of those to be kept apart, none.</param>
/// <param name="More">The others by name.</param>
/// <param name="MoreLabel">What opens them.</param>
public sealed record MateList(
    string Verdict, string Count, IReadOnlyList<MateLine> First, IReadOnlyList<Link> More, string MoreLabel);

/// <summary>A companion with the reasons for the verdict.</summary>
public sealed record MateLine(Link Species, IReadOnlyList<LatinText> Why);
