using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Tankmates.Aspects;

namespace CareSheets.Tankmates;

public sealed partial record Tankmate
{
    private static readonly string[] AnimalDiets = ["micropredator", "insectivore", "omnivore"];

    /// <param name="entry">As the writer stated it.</param>
    /// <param name="collection">What the schema declares and other entries say belongs to it.</param>
    /// <param name="ask">Asked only of ranges that count and are not stated.</param>
    public static Tankmate Of(Entry entry, SpeciesCollection collection, AskRelatives ask)
    {
        var (company, eats) = (entry.Company, entry.Company.Eats.Select(e => e.Value).ToList());
        return new Tankmate
        {
            Name = entry.Name,
            Genus = entry.Genus,
            Water = [.. collection.Ranges.Select(r => WaterOf(entry, r, collection, ask))],
            Body = BodyOf(entry, eats),
            Flow = CareWord<Flow>(entry, "flow"),
            Light = CareWord<Light>(entry, "light"),
            Oxygen = CareWord<Oxygen>(entry, "oxygen"),
            OwnKind = EntryWord.Required<Temper>(company.OwnKind),
            Others = EntryWord.Required<Temper>(company.Others),
            Levels = company.Levels.Aggregate(Levels.None, (all, l) => all | EntryWord.Required<Levels>(l)),
            Group = company.Group.Value,
            GroupKind = company.GroupKind,
            NipsFins = eats.Contains("fins"),
            EatsPlants = eats.Contains("plants"),
            IsTall = entry.Adult.Height is not null,
            Fins = entry.Adult.Fins is { } fins ? EntryWord.Required<Fins>(fins) : null,
            Neighbours = company.Neighbours is { } borne ? EntryWord.Required<Neighbours>(borne) : Neighbours.Any,
            NotWith = InOrder(company.NotWith.Select(n => n.Value)),
            Avoided = InOrder(entry.Taxa.Where(collection.KeptApart.Contains)),
            Housing = HousingOf(entry.Tank),
        };
    }

    private static List<string> InOrder(IEnumerable<string> taxa) => [.. taxa.Order(StringComparer.Ordinal)];

    private static WaterNeed WaterOf(
        Entry entry, CareRangeDeclaration range, SpeciesCollection collection, AskRelatives ask)
    {
        var stated = entry.Range(range.Field);
        Stretch? Of(RangeKind kind) =>
            stated?.Of(kind) is { } kinded ? Stretch.From(kinded.Range.Value) : null;
        var isFresh = range.Dimension == DimensionCatalogue.Salinity &&
            FreshWater.GoesWithoutSaying(entry, collection);
        var keep = isFresh ? Stretch.Between(0, FreshWater.UpTo) : Of(RangeKind.Keep);
        return new WaterNeed(range, keep, Of(RangeKind.Prefers), isFresh)
        {
            Suggested = keep is null && WaterAspect.IsNeeded(range) && ask(entry, range) is { } suggested
                ? Stretch.Between(suggested.Low, suggested.High) : null,
        };
    }

    private static Body BodyOf(Entry entry, List<string> eats)
    {
        var (length, mouth) = (entry.Adult.Length.Value, EntryWord.Required<Mouth>(entry.Adult.Mouth));
        return new Body(
            Stretch.From(length), length.Basis ?? LengthBasis.Total,
            EntryWord.Required<BodyShape>(entry.Adult.Shape), mouth, AppetiteOf(entry, eats, mouth));
    }

    private static Appetite AppetiteOf(Entry entry, List<string> eats, Mouth mouth)
    {
        var diet = entry.Diet.Select(d => d.Value).ToList();
        if (eats.Contains("small fish") || diet.Contains("piscivore"))
            return Appetite.Hunter;
        return mouth >= Mouth.Medium && diet.Exists(d => AnimalDiets.Contains(d))
            ? Appetite.Opportunist : Appetite.None;
    }

    private static Housing HousingOf(Tank tank)
    {
        static double? Most(Sourced<StatedRange>? side) => side is null ? null : Stretch.From(side.Value).High;
        return new Housing(
            Stretch.From(tank.Length.Value).High, Most(tank.Width), Most(tank.Height),
            Stretch.From(tank.Volume.Value).High, EntryWord.Required<Substrate>(tank.Substrate),
            EntryWord.Required<Lid>(tank.Lid), [.. tank.Needs.Select(n => n.Value)]);
    }

    private static T? CareWord<T>(Entry entry, string field)
        where T : struct, Enum =>
        entry.CareWords.FirstOrDefault(w => w.Declaration.Field == field) is { } stated
            ? EntryWord.Required<T>(stated.Word) : null;
}
