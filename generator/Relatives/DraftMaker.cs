using System.Globalization;
using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>
/// Drafts an entry from relatives. Ranges of the water are estimates; everything that a fish or a keeper
/// suffers from when it is too small, or too bold, takes the careful end: the worst of the near relatives.
/// </summary>
public static class DraftMaker
{
    /// <summary>Words from harmless to grave, as the schema lists them.</summary>
    internal static readonly IReadOnlyDictionary<string, string[]> Graver = new Dictionary<string, string[]>
    {
        ["adult.mouth"] = ["tiny", "small", "medium", "large"],
        ["tank.lid"] = ["no", "yes", "tight"],
        ["company.own kind"] = ["peaceful", "feisty", "territorial", "fierce"],
        ["company.others"] = ["peaceful", "feisty", "territorial", "fierce"],
    };

    private static readonly string[] Missing =
    [
        "scientificNameAuthorship: who named it, and when",
        "originalNameUsage: the name it was first described under",
        "vernacularName: what customers call it",
        "formerNames: names it had before, by which lists of suppliers may still call it",
        "origin: its countries and waters, from a source and never from relatives",
        "adult.lifeSpan: how long it lives",
        "adult.sexes: how males and females are told apart",
        "adult.fins: ordinary or trailing, which invites nippers",
        "active.when: by day, at dusk or by night",
        "company.neighbours: what neighbours it bears, any, of its size or none",
        "diet: what it eats by nature",
        "foods: what it is fed",
        "habits: whether it leaps, digs or does anything else that a keeper has to know",
        "tank.needs: what the tank has to offer it",
        "cautions: spines, venom and anything else that can hurt, from a source and never from relatives",
        "laws: whether it may be kept and sold, from the authority and never from relatives",
        "references: works about this very species",
        "reviewed: the day on which a person has read the whole entry",
    ];

    public static Draft Make(RelativesEngine engine, ScientificName name, NewPlace place)
    {
        var near = Near(engine, place);
        return new Draft(
            name, place,
            [
                .. Length(engine, place), .. Words(near), .. Ranges(engine, place),
                .. CareWords(engine, near), .. Tank(near), .. Company(near),
            ],
            [Salt(engine.Collection, place), .. Missing]);
    }

    /// <summary>Salt is never inferred; where a relative needs it, silence does not mean fresh water.</summary>
    private static string Salt(SpeciesCollection collection, NewPlace place) =>
        FreshWater.NeedyRelative(collection, place.Genus, place.Family) is { } relative
            ? $"care.salinity: whether it needs salt, for its relative {relative.ScientificName.Value} does; " +
                "if it lives in fresh water, state that too"
            : "care.salinity: if it needs or bears salt; silence means fresh water";

    /// <summary>Species of the genus with evidence of their own, or else those of the family.</summary>
    private static DraftKin Near(RelativesEngine engine, NewPlace place)
    {
        var known = engine.Collection.Entries.Where(e => e.Evidence.IsOwn).ToList();
        var genus = known.Where(e => e.Genus == place.Genus).ToList();
        return genus.Count > 0
            ? new DraftKin("genus", genus)
            : new DraftKin("family", [.. known.Where(e => e.Family.Value == place.Family)]);
    }

    /// <summary>
    /// The whole stretch that holds it in 80 of 100 cases, for which end is careful depends on who asks: tanks are
    /// bought and prey is swallowed by the large end, and a fish is swallowed by its small one.
    /// </summary>
    private static IEnumerable<DraftValue> Length(RelativesEngine engine, NewPlace place)
    {
        if (EstimateMaker.ForNew(engine, place, "adult.length") is not { } estimate)
            yield break;
        var text = estimate is { Verdict: EstimateVerdict.Estimated, Range: { } range }
            ? DraftText.Between(estimate.Figure.Declaration.Dimension, range.Sure.Low, range.Sure.High) + " TL"
            : "";
        yield return new DraftValue("adult.length", text, DraftText.Comment(estimate) + (text.Length == 0 ? ""
            : "; the large end counts for room and mouth, the small end for who may eat it. " +
            "Write its own length in place of both"));
    }

    private static IEnumerable<DraftValue> Ranges(RelativesEngine engine, NewPlace place) =>
        from declared in engine.Collection.Ranges
        where declared.IsAlwaysShown
        let estimate = EstimateMaker.ForNew(engine, place, declared.Field)
        where estimate is not null
        let range = estimate.Verdict == EstimateVerdict.Estimated ? estimate.Range : null
        select new DraftValue(
            $"care.{declared.Field}",
            range is null ? "" : DraftText.Range(declared.Dimension, range.Low, range.High),
            DraftText.Comment(estimate));

    private static IEnumerable<DraftValue> Words(DraftKin near) =>
        near.Entries.Count == 0
            ? []
            : [
                near.Common("adult.shape", e => e.Adult.Shape.Value),
                near.Gravest("adult.mouth", e => e.Adult.Mouth.Value, Graver["adult.mouth"]),
            ];

    private static IEnumerable<DraftValue> CareWords(RelativesEngine engine, DraftKin near)
    {
        foreach (var declared in engine.Collection.Entries.SelectMany(e => e.CareWords)
            .Select(w => w.Declaration).DistinctBy(w => w.Field))
        {
            var with = new DraftKin(
                near.Rank, [.. near.Entries.Where(e => e.CareWords.Any(w => w.Declaration.Field == declared.Field))]);
            string Word(Entry entry) => entry.CareWords.First(w => w.Declaration.Field == declared.Field).Word.Value;
            if (with.Entries.Count > 0)
                yield return declared.Field == "oxygen"
                    ? with.Gravest("care.oxygen", Word, declared.Words)
                    : with.Common($"care.{declared.Field}", Word);
        }
    }

    private static IEnumerable<DraftValue> Tank(DraftKin near) =>
        near.Entries.Count == 0
            ? []
            : [
                near.Largest("tank.length", e => e.Tank.Length.Value),
                near.Largest("tank.volume", e => e.Tank.Volume.Value),
                near.Common("tank.substrate", e => e.Tank.Substrate.Value),
                near.Gravest("tank.lid", e => e.Tank.Lid.Value, Graver["tank.lid"]),
            ];

    private static IEnumerable<DraftValue> Company(DraftKin near)
    {
        if (near.Entries.Count == 0)
            return [];
        var lives = near.Common("company.lives", e => e.Company.Lives.Value);
        return
        [
            lives,
            Group(near with { Entries = [.. near.Entries.Where(e => e.Company.Lives.Value == lives.Text)] }),
            near.Gravest("company.own kind", e => e.Company.OwnKind.Value, Graver["company.own kind"]),
            near.Gravest("company.others", e => e.Company.Others.Value, Graver["company.others"]),
            near.All("company.level", e => e.Company.Levels.Select(l => l.Value)),
            near.All("company.eats", e => e.Company.Eats.Select(l => l.Value)),
        ];
    }

    /// <summary>The largest of those that live in the same manner: a loner next to a shoal stays alone.</summary>
    private static DraftValue Group(DraftKin alike)
    {
        var largest = alike.Entries.Max(e => e.Company.Group.Value);
        return new DraftValue(
            "company.group", largest.ToString(CultureInfo.InvariantCulture), $"the largest among {alike.Who}");
    }
}
