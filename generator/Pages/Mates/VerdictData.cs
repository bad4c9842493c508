using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Tankmates;

namespace CareSheets.Pages.Mates;

/// <summary>
/// The verdicts of all pairs as tables for the scripts: for each aspect the facet of each species,
/// and for each two facets the number of their set of reasons, written as one character.
/// </summary>
internal sealed class VerdictData(Site site, Acquaintances mates)
{
    /// <summary>Set 0 is written as this character, set 1 as the next.</summary>
    private const int FirstCharacter = '#';

    /// <summary>Characters from here on are halves of others and can't stand alone.</summary>
    private const int Surrogates = 0xD800;

    private readonly MateSentences _sentences = new(site);
    private readonly StretchText _figures = new(site.Words, site.Units);

    public object Make() => new
    {
        first = FirstCharacter,
        sentences = Enum.GetValues<ReasonKind>().ToDictionary(k => k.ToString(), k => site.Words[$"mate.{k}"]),
        apart = site.Words.Group("mate_apart").ToDictionary(w => w.Name, w => w.Text),
        once = Enum.GetValues<ReasonKind>().Where(PairJudge.IsSaidOnce).Select(k => k.ToString()),
        aspects = mates.Tables.Select(Aspect),
        water = mates.Ranges.Select(Water),
    };

    private object Aspect(AspectTable table) => new
    {
        mutual = table.Aspect.IsMutual,
        of = Places.Select(table.FacetOf),
        details = table.Examples.Select(e =>
            table.Aspect.Details(e).ToDictionary(d => d.Blank, _sentences.Text)),
        sets = table.Sets.Select(set => set.Select(Reason)),
        rows = Enumerable.Range(0, table.Examples.Count).Select(one => string.Concat(
            Enumerable.Range(0, table.Examples.Count).Select(other => Character(table.SetOf(one, other))))),
    };

    private IEnumerable<int> Places => Enumerable.Range(0, mates.Mates.Count);

    /// <summary>Kind, weight, field, what is shared.</summary>
    private object[] Reason(Reason reason) =>
        [reason.Kind.ToString(), (int)reason.Weight, _sentences.FieldName(reason.Field), _sentences.Shared(reason)];

    private static char Character(int set) => FirstCharacter + set < Surrogates
        ? (char)(FirstCharacter + set)
        : throw new InvalidOperationException("More sets of reasons than there are characters.");

    /// <summary>
    /// The greatest lower end and the least upper end of a group are what it shares, so the text
    /// of each two ends is written once, and every species has the numbers of its two.
    /// </summary>
    private object Water(CareRangeDeclaration range)
    {
        var keeps = mates.Mates.Select(m => m.Need(range)?.Keep).ToList();
        var lows = keeps.OfType<Stretch>().Select(k => k.Low).Distinct().Order().ToList();
        var highs = keeps.OfType<Stretch>().Select(k => k.High).Distinct().Order().ToList();
        return new
        {
            label = RangeRowMaker.LabelOf(range, site.Words),
            always = range.IsAlwaysShown,
            said = mates.Mates.Select(m => m.Need(range) is { Keep: not null, IsAssumed: false }),
            low = keeps.Select(k => k is { } known ? lows.BinarySearch(known.Low) : -1),
            high = keeps.Select(k => k is { } known ? highs.BinarySearch(known.High) : -1),
            texts = lows.Select(low => highs.Select(high => low <= high
                ? _figures.Show(range.Dimension, Stretch.Between(low, high), Rounding.Inward)
                : "")),
        };
    }
}
