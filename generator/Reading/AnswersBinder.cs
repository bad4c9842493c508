using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>What a writer answers to findings: values that are right all the same, rules that do not hold.</summary>
internal static class AnswersBinder
{
    public static IReadOnlyList<Acceptance> Accepted(Fields fields) =>
    [
        .. from one in Items(fields, "accepted")
           where one.Text("figure") is not null && one.Text("value") is not null
           select new Acceptance(one.Text("figure")!, one.Text("value")!, one.Text("reason")?.Value ?? ""),
    ];

    public static IReadOnlyList<Waiver> Waived(Fields fields) =>
    [
        .. from one in Items(fields, "waived")
           where one.Text("rule") is not null
           select new Waiver(one.Text("rule")!, one.Text("reason")?.Value ?? ""),
    ];

    private static IEnumerable<Fields> Items(Fields fields, string name) =>
        fields.Node(name) is YamlSequence list ? list.Items.OfType<YamlMapping>().Select(i => new Fields(i)) : [];
}
