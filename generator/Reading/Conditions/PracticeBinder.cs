using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Reading.Conditions;

/// <summary>Trees of rules.yaml, hazards.yaml and demands.yaml to their records.</summary>
internal sealed class PracticeBinder(EntrySchema schema, DiagnosticBag bag)
{
    private static readonly IReadOnlyDictionary<string, HazardKind> HazardKinds =
        Enum.GetValues<HazardKind>().ToDictionary(k => WordOf(k));

    private static readonly IReadOnlyDictionary<string, DemandKind> DemandKinds =
        Enum.GetValues<DemandKind>().ToDictionary(k => WordOf(k));

    private readonly ConditionReader _conditions = new(schema.Catalogue, bag);
    private readonly EntryFieldsBinder _examples = new(schema.Catalogue);
    private readonly ExampleReader _exampleErrors = new(schema, bag);

    public IReadOnlyList<Rule> Rules(YamlMapping? root) => Records(root, Rule);

    public IReadOnlyList<Hazard> Hazards(YamlMapping? root) => Records(root, Hazard);

    public IReadOnlyList<Demand> Demands(YamlMapping? root) => Records(root, Demand);

    private static IReadOnlyList<T> Records<T>(YamlMapping? root, Func<Sourced<string>, Fields, T?> bind)
        where T : class =>
        [
            .. from field in root?.Fields ?? []
               where field.Value is YamlMapping
               let one = bind(new(field.Key.Text, field.Key.Span), new Fields((YamlMapping)field.Value))
               where one is not null
               select one,
        ];

    private Rule? Rule(Sourced<string> name, Fields fields)
    {
        var (when, expects) = (_conditions.All(fields.Node("when")), _conditions.All(fields.Node("expect")));
        if (Evidence(fields) is not { } evidence || fields.Text("says") is not { } says ||
            fields.Text("remedy") is not { } remedy || fields.Text("reason") is not { } reason ||
            fields.Node("fires") is not YamlMapping fires || fields.Node("passes") is not YamlMapping passes ||
            Lost(fields.Node("when"), when) || Lost(fields.Node("expect"), expects))
            return null;
        _exampleErrors.Check(fires);
        _exampleErrors.Check(passes);
        return new Rule(name, SeverityOf(fields), says.Value, remedy.Value, reason.Value, evidence, when, expects,
            _examples.Bind(fires), _examples.Bind(passes));
    }

    private Hazard? Hazard(Sourced<string> name, Fields fields)
    {
        var when = _conditions.All(fields.Node("when"));
        return Evidence(fields) is { } evidence && fields.Text("says") is { } says &&
            fields.Text("brief") is { } brief && !Lost(fields.Node("when"), when) &&
            fields.Text("kind") is { } kind && HazardKinds.TryGetValue(kind.Value, out var known)
            ? new Hazard(name, known, says.Value, brief.Value, evidence, when, Told(fields))
            {
                Called = [.. fields.Texts("called").Select(t => t.Value)],
            }
            : null;
    }

    private Demand? Demand(Sourced<string> name, Fields fields)
    {
        var when = _conditions.All(fields.Node("when"));
        if (Evidence(fields) is not { } evidence || fields.Text("says") is not { } says ||
            fields.Text("brief") is not { } brief || Lost(fields.Node("when"), when) ||
            fields.Text("kind") is not { } kind || !DemandKinds.TryGetValue(kind.Value, out var known))
            return null;
        ShownFields.Check(says, schema.Catalogue, bag);
        ShownFields.Check(brief, schema.Catalogue, bag);
        return new Demand(name, known, says.Value, brief.Value, evidence, when);
    }

    /// <summary>A rule of which a condition could not be read would say something else than its writer.</summary>
    private static bool Lost(YamlNode? written, AllOf read) => written switch
    {
        null => false,
        YamlSequence list => list.Items.Count != read.Parts.Count || list.Items.Zip(read.Parts).Any(LostInside),
        _ => read.Parts.Count == 0 || LostInside((written, read.Parts[0])),
    };

    private static bool LostInside((YamlNode Written, Condition Read) pair) => (pair.Written, pair.Read) switch
    {
        (YamlMapping { Fields: [var field] }, AllOf all) => Lost(field.Value, all),
        (YamlMapping { Fields: [var field] }, AnyOf any) => Lost(field.Value, new AllOf(any.Parts)),
        (YamlMapping { Fields: [var field] }, NoneOf none) => Lost(field.Value, new AllOf(none.Parts)),
        _ => false,
    };

    private static Evidence? Evidence(Fields fields) => EvidenceWord.Read(fields.Text("evidence"));

    private static Severity SeverityOf(Fields fields) => fields.Text("severity")?.Value switch
    {
        "error" => Severity.Error,
        "note" => Severity.Note,
        _ => Severity.Warning,
    };

    private static IReadOnlyList<IReadOnlyList<string>> Told(Fields fields) =>
    [
        .. fields.Texts("told by").Select(group =>
            group.Value.Split(" or ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)),
    ];

    /// <summary>As the files write it: <c>VenomousSpines</c> is <c>venomous spines</c>.</summary>
    private static string WordOf<T>(T kind)
        where T : struct, Enum =>
        string.Concat(kind.ToString().Select((c, i) =>
            i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
}
