namespace CareSheets.Diagnostics;

/// <summary>
/// A kind of mistake or remark. <see cref="Message"/> and <see cref="Hint"/> are templates whose
/// <c>{placeholders}</c> are filled from the diagnostic's values.
/// </summary>
public sealed record DiagnosticCode(string Id, Severity Severity, string Message, string Hint = "");
