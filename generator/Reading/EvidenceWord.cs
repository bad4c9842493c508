using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>The words of evidence that a writer types; anything else is the key of a reference.</summary>
internal static class EvidenceWord
{
    public static Evidence? Read(Sourced<string>? word) => word?.Value switch
    {
        null => null,
        "common practice" => new Evidence(EvidenceKind.CommonPractice, "", word.Span),
        "from memory" => new Evidence(EvidenceKind.FromMemory, "", word.Span),
        "seen here" => new Evidence(EvidenceKind.SeenHere, "", word.Span),
        "from relatives" => new Evidence(EvidenceKind.FromRelatives, "", word.Span),
        _ => new Evidence(EvidenceKind.Published, word.Value, word.Span),
    };
}
