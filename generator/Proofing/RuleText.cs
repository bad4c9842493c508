using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Proofing;

/// <summary>A broken rule as a diagnostic at the line that breaks it.</summary>
internal static class RuleText
{
    private const int LongestShown = 60;

    public static Breach Breach(Rule rule, Entry entry)
    {
        var against = rule.Expects.Against(entry.Fields).Distinct().ToList();
        var asked = against.Concat(rule.When.Fields);
        var quotes = rule.Expects.Quotes(entry.Fields).ToList();
        var caused = quotes.Concat(rule.When.Quotes(entry.Fields)).FirstOrDefault();
        var span = against.Select(path => entry.Fields[path]?.Span).FirstOrDefault(s => s is not null);
        var stated = asked.Select(path => entry.Fields[path]?.Span).FirstOrDefault(s => s is not null);
        var found = quotes.Count > 0
            ? string.Join(", ", quotes.Select(Quoted).Distinct())
            : string.Join(", ", against.Select(path => Shown(path, entry.Fields)).Concat(Cause(span, caused)));
        var told = Diagnostic.Of(CodeOf(rule.Severity),
            quotes.Count > 0 ? caused!.Span : span ?? caused?.Span ?? stated ?? entry.Span,
            ("rule", rule.Name.Value), ("says", rule.Says), ("found", found), ("remedy", rule.Remedy),
            ("reason", rule.Reason), ("evidence", Evidence(rule.Evidence)));
        return new Breach(rule.Name.Value, entry, told.At(against.FirstOrDefault() ?? "")
            .With([new RelatedSpan(rule.Name.Span, $"the rule {rule.Name.Value} is here")]));
    }

    /// <summary>Where what is expected is not stated at all, the words that ask for it are shown.</summary>
    private static IEnumerable<string> Cause(SourceSpan? stated, Quote? caused) =>
        stated is null && caused is not null ? [Quoted(caused)] : [];

    private static string Quoted(Quote quote) => $"“{Excerpt.Of(Plain(quote.Words))}”";

    private static string Plain(string words) =>
        string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    public static DiagnosticCode CodeOf(Severity severity) => severity switch
    {
        Severity.Error => ProofingCodes.Wrong,
        Severity.Warning => ProofingCodes.Doubtful,
        Severity.Note => ProofingCodes.Remark,
    };

    private static string Shown(string path, EntryFields fields)
    {
        var name = path.EndsWith(EntryFields.Best, StringComparison.Ordinal) ? path[..^EntryFields.Best.Length] : path;
        var value = fields[path] switch
        {
            FieldFigure figure => figure.Stated.Value.Text,
            FieldCount count => FormattableString.Invariant($"{count.Number.Value}"),
            FieldWords { Words.Count: 0 } => "is empty",
            FieldWords words => string.Join(", ", words.Words.Select(w => w.Value)),
            _ => "is not stated",
        };
        return value.Length <= LongestShown ? $"{name} {value}" : name;
    }

    private static string Evidence(Evidence evidence) => evidence.Kind switch
    {
        EvidenceKind.Published => evidence.Key,
        EvidenceKind.SeenHere => "seen here",
        EvidenceKind.CommonPractice => "common practice, no source",
        EvidenceKind.FromMemory => "from memory",
        EvidenceKind.Like or EvidenceKind.FromRelatives => "from relatives",
    };
}
