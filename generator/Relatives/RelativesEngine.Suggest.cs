using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Relatives;

public sealed partial class RelativesEngine
{
    /// <summary>
    /// The estimate that pages show instead of a range that is not stated; nothing where the entry says how the
    /// fish is kept, what it bears or how it breeds, or where relatives can't tell.
    /// </summary>
    public SuggestedRange? Suggest(Entry entry, CareRangeDeclaration range) =>
        entry.Range(range.Field)?.Kinds.All(k => k.Kind == RangeKind.Wild) is not false &&
        EstimateMaker.Make(this, entry, range.Field) is
        { Verdict: EstimateVerdict.Estimated, Range: { } estimated }
            ? new SuggestedRange(estimated.Low, estimated.High)
            : null;
}
