using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Proofing;

/// <summary>Something that could go wrong with a species, ready to be told.</summary>
/// <param name="Text">One or two sentences.</param>
/// <param name="Brief">The same in a few words; the text itself where the entry's writer gave no shorter one.</param>
/// <param name="Kind">The hazard it tells of, or nothing for a caution of the entry's own.</param>
/// <param name="Span">Where it is written.</param>
public sealed record Caution(
    string Text, string Brief, HazardKind? Kind, Evidence Evidence, SourceSpan Span);
