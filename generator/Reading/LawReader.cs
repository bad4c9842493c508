using CareSheets.Diagnostics;
using CareSheets.Regulations;

namespace CareSheets.Reading;

/// <summary>
/// Reads what the shop has written down of law: each file of <c>regulations</c> is a list, and
/// <c>duties.yaml</c> holds the duties of advice. Content without either is complete.
/// </summary>
internal sealed class LawReader(string contentFolder, CheckedYaml yaml, DiagnosticBag bag)
{
    private const string Folder = "regulations";
    private const string Duties = "duties.yaml";

    public LawBook Read() => new(ReadLists(), ReadDuties());

    private IReadOnlyList<RegulationList> ReadLists()
    {
        var folder = Path.Combine(contentFolder, Folder);
        if (!Directory.Exists(folder) || yaml.Schema("regulation.schema.json") is not { } schema)
            return [];
        var binder = new RegulationBinder(bag);
        return
        [
            .. from path in Directory.GetFiles(folder, "*.yaml").Order(StringComparer.Ordinal)
               let root = yaml.Read(path, schema)
               where root is not null
               let list = binder.Bind(Path.GetFileNameWithoutExtension(path), root)
               where list is not null
               select list,
        ];
    }

    private IReadOnlyList<AdviceDuty> ReadDuties()
    {
        var path = Path.Combine(contentFolder, Duties);
        return File.Exists(path) && yaml.Schema("duties.schema.json") is { } schema &&
            yaml.Read(path, schema) is { } root
            ? DutyBinder.Bind(root, bag)
            : [];
    }
}
