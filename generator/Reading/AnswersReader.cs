using System.Globalization;
using CareSheets.Arrivals;
using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>What people have answered for one supplier, from content/arrivals/answers.</summary>
public static class AnswersReader
{
    /// <summary>Empty where there is no such file; nothing when it can't be read, and the bag says why.</summary>
    public static IReadOnlyList<SupplierAnswer>? Read(string path, string schemaFolder, DiagnosticBag bag)
    {
        if (!File.Exists(path))
            return [];
        var schemaPath = Path.Combine(schemaFolder, "answers.schema.json").Replace('\\', '/');
        if (ContentSchema.Read(schemaPath, schemaPath, bag) is not { } schema ||
            TextFileReader.Read(path, path.Replace('\\', '/'), bag) is not { } file ||
            new YamlReader(file, 1, bag).Read(file.Text) is not { } root)
            return null;
        var own = new DiagnosticBag();
        new SchemaCheck(schema, own).Check(root);
        bag.Add(own.Sorted());
        return own.HasErrors
            ? null
            : [.. ArrivalBinder.Mappings(new Fields(root), "answers").Select(Answer).OfType<SupplierAnswer>()];
    }

    private static SupplierAnswer? Answer(YamlMapping node)
    {
        var fields = new Fields(node);
        return fields.Text("said") is { } said && fields.Text("entry") is { } entry &&
            fields.Text("since") is { } since &&
            DateOnly.TryParseExact(since.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture,
                DateTimeStyles.None, out var day)
            ? new SupplierAnswer(said.Value, entry.Value, day)
            : null;
    }
}
