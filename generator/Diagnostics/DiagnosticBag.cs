namespace CareSheets.Diagnostics;

/// <summary>
/// Collects what the stages of a run have to say. A stage goes on after an error when it can, so
/// that one run tells everything.
/// </summary>
public sealed class DiagnosticBag
{
    private readonly List<Diagnostic> _all = [];

    public bool HasErrors => _all.Exists(d => d.Severity == Severity.Error);

    public int Count(Severity severity) => _all.Count(d => d.Severity == severity);

    /// <summary>Every diagnostic once, in the order in which they are printed.</summary>
    public IReadOnlyList<Diagnostic> Sorted()
    {
        var sorted = _all.ToList();
        sorted.Sort(Diagnostic.InPrintOrder);
        return sorted;
    }

    public void Add(Diagnostic diagnostic) => _all.Add(diagnostic);

    public void Add(IEnumerable<Diagnostic> diagnostics) => _all.AddRange(diagnostics);

    public void Add(DiagnosticCode code, SourceSpan span, params (string Name, string Value)[] values) =>
        _all.Add(Diagnostic.Of(code, span, values));
}
