using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>What a coded rule always says, and a broken one as a diagnostic.</summary>
/// <param name="Evidence">Where the rule comes from, in a few words.</param>
internal sealed record CodedText(
    string Name, Severity Severity, string Says, string Remedy, string Reason, string Evidence)
{
    public Breach Breach(Entry entry, SourceSpan span, string path, string found, params RelatedSpan[] related) =>
        new(Name, entry, Diagnostic.Of(RuleText.CodeOf(Severity), span,
            ("rule", Name), ("says", Says), ("found", found), ("remedy", Remedy), ("reason", Reason),
            ("evidence", Evidence)).At(path).With(related));
}
