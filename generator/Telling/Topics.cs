namespace CareSheets.Telling;

/// <summary>
/// What can be told of a species, the most telling first: of two that surprise alike the earlier is
/// told. Which is more telling is our opinion.
/// </summary>
internal static class Topics
{
    /// <summary>Topics of one subject follow from one another, so a talk takes one of them.</summary>
    private static readonly IReadOnlyList<(string Topic, string Subject)> Ranked =
    [
        ("length", "size"), ("diet", "diet"), ("lives", "company"), ("eats", "eats"), ("flow", "flow"),
        ("temperature", "temperature"), ("ph", "ph"), ("hardness", "hardness"), ("countryCode", "origin"),
        ("level", "level"), ("life", "life"), ("tank", "size"), ("needs", "needs"), ("others", "temper"),
        ("ownKind", "temper"), ("lid", "lid"), ("group", "company"),
    ];

    public static string SubjectOf(string topic) => Ranked.First(r => r.Topic == topic).Subject;

    public static int PlaceOf(string topic) => Ranked.Select(r => r.Topic).ToList().IndexOf(topic);
}
