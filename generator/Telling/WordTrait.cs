using CareSheets.Species;

namespace CareSheets.Telling;

/// <summary>A property of words in which species can be held against one another.</summary>
/// <param name="Of">The words of an entry; none where it is silent.</param>
/// <param name="Plain">A word that says nothing worth telling, however rare it is.</param>
internal sealed record WordTrait(string Topic, Func<Entry, IEnumerable<string>> Of, params string[] Plain)
{
    public static readonly IReadOnlyList<WordTrait> All =
    [
        new("lives", e => [e.Company.Lives.Value]),
        new("ownKind", e => [e.Company.OwnKind.Value]),
        new("others", e => [e.Company.Others.Value]),
        new("diet", e => e.Diet.Select(d => d.Value), "omnivore"),
        new("level", e => e.Company.Levels.Count == 1 ? [e.Company.Levels[0].Value] : []),
        new("flow", e => e.CareWords.Where(w => w.Declaration.Field == "flow").Select(w => w.Word.Value)),
        new("lid", e => [e.Tank.Lid.Value], "yes", "no"),
        new("eats", e => e.Company.Eats.Select(w => w.Value), "fry"),
        new("needs", e => e.Tank.Needs.Select(n => n.Value), "open water", "shade", "caves", "wood"),
        new("countryCode", e => e.Origin.CountryCodes.Count == 1 ? [e.Origin.CountryCodes[0].Value] : []),
    ];
}
