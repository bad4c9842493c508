using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>TP: the theme's templates and words.</summary>
public static class TemplateCodes
{
    public static readonly DiagnosticCode Syntax = new("TP601", Error,
        "The template can't be read: {reason}", "");

    public static readonly DiagnosticCode Failed = new("TP602", Error,
        "The template failed: {reason}", "A template may use what its page record in generator/Pages holds.");

    public static readonly DiagnosticCode NoTemplate = new("TP603", Error,
        "The theme has no template {name}", "Every kind of page needs one.");

    public static readonly DiagnosticCode NoWord = new("TP604", Error,
        "The theme has no words for {key}", "Add it to words.yaml or sentences.yaml of the theme.");

    public static readonly DiagnosticCode MissingBlank = new("TP605", Error,
        "The words for {key} leave out {blank}", "Put {blank} where the value belongs.");

    public static readonly IReadOnlyList<DiagnosticCode> All = [Syntax, Failed, NoTemplate, NoWord, MissingBlank];
}
