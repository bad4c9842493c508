using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>
/// What a bag may do to hands while nobody has said what swims in it, or only a draft has: the hazards of every
/// fish that its line may mean. What may be is told, not only what is; and where no name tells of any, that too.
/// </summary>
internal sealed class HazardAlarm(Site site)
{
    private readonly MeantFishes _meant = new(site.Collection);

    private Words Words => site.Words;

    public IReadOnlyList<string> Of(Batch batch)
    {
        var meant = _meant.Of(batch);
        List<string> told =
        [
            .. from hazard in site.Collection.Practice.Hazards
               where hazard is { IsGeneral: false, IsForHands: true }
               orderby hazard.Kind
               let names = Names(hazard, batch, meant)
               where names.Length > 0
               select Words.Say("docket.maybe_hazard", ("names", names), ("hazard", hazard.Brief)),
        ];
        return told.Count > 0 ? told : [Words["docket.unknown_hazard"]];
    }

    private string Names(Hazard hazard, Batch batch, IReadOnlyList<MeantFish> meant) => string.Join(
        Words["docket.or"],
        meant.Where(m => hazard.When.Judge(AsSold(m.Fields, batch)) != Truth.No).Select(m => m.Name)
            .Concat(hazard.Called.Where(c => Mentions.Holds(batch.Said.Value, c))
                .Select(c => Words.Say("docket.quoted", ("said", c)))));

    /// <summary>Of a fish known by its name alone, the length in the bag decides whether it bites.</summary>
    private static EntryFields AsSold(EntryFields fields, Batch batch) =>
        batch.Size is not { } size || fields["adult.length"] is not null ? fields
            : fields.With([new KeyValuePair<string, FieldValue>(
                "adult.length", new FieldFigure(new Sourced<StatedRange>(size, SourceSpan.None)))]);
}
