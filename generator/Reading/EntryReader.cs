using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>One entry from its text: split, parsed, checked against the schema, bound.</summary>
internal static class EntryReader
{
    public static Entry? Read(SourceFile file, EntrySchema schema, DiagnosticBag bag)
    {
        if (FrontMatter.Split(file, bag) is not { } parts ||
            new YamlReader(file, parts.FirstLine, bag).Read(parts.Yaml) is not { } root)
            return null;
        new SchemaCheck(schema.Schema, bag).Check(root);
        return new EntryBinder(schema, bag).Bind(file, root, parts);
    }
}
