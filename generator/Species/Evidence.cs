using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>Where a figure comes from.</summary>
public enum EvidenceKind
{
    /// <summary>A work of references.yaml says so.</summary>
    Published,

    /// <summary>The shop's own record.</summary>
    SeenHere,

    /// <summary>Settled among keepers, without a source.</summary>
    CommonPractice,

    /// <summary>Recalled by the writer, to be checked.</summary>
    FromMemory,

    /// <summary>Borrowed from a named relative's entry.</summary>
    Like,

    /// <summary>Estimated from what relatives' entries say.</summary>
    FromRelatives,
}

/// <summary>
/// The evidence of a figure. <see cref="Key"/> is the reference of a published figure or the entry
/// of a borrowed one, else empty.
/// </summary>
public sealed record Evidence(EvidenceKind Kind, string Key, SourceSpan Span)
{
    /// <summary>Only a figure with evidence of its own says anything about relatives.</summary>
    public bool IsOwn => Kind is not (EvidenceKind.Like or EvidenceKind.FromRelatives);
}
