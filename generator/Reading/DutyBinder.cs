using CareSheets.Diagnostics;
using CareSheets.Regulations;

namespace CareSheets.Reading;

/// <summary>Tree of duties.yaml to the duties of written advice.</summary>
internal static class DutyBinder
{
    public static IReadOnlyList<AdviceDuty> Bind(YamlMapping root, DiagnosticBag bag) =>
    [
        .. from field in root.Fields
           where field.Value is YamlMapping
           let duty = Bind(new Fields((YamlMapping)field.Value), bag)
           where duty is not null
           select duty,
    ];

    private static AdviceDuty? Bind(Fields fields, DiagnosticBag bag) =>
        fields.Text("title") is { } title && fields.Text("clause") is { } clause &&
        LawWords.Evidence(fields.Text("evidence")) is { } evidence && fields.Text("source") is { } source
            ? new AdviceDuty(
                title, [.. fields.Texts("applies").Select(a => a.Value)], clause.Value,
                LawWords.Topics(fields.Texts("asks")), LawWords.Topics(fields.Texts("wishes")), evidence,
                LawWords.Day(fields.Text("checked"), bag)?.Value, source.Value, fields.Text("note")?.Value)
            : null;
}
