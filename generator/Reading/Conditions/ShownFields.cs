using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Names;

namespace CareSheets.Reading.Conditions;

/// <summary>The fields whose figures a sentence shows: paths in braces, as in <c>{adult.length}</c>.</summary>
internal static partial class ShownFields
{
    public static void Check(Sourced<string> sentence, FieldCatalogue fields, DiagnosticBag bag)
    {
        var paths = Blank().Matches(sentence.Value).Select(m => m.Groups[1].Value);
        foreach (var path in paths.Where(p => fields.Find(p) is null))
            bag.Add(ProofingCodes.NoField, sentence.Span, ("name", path),
                ("suggestion", EditDistance.Nearest(path, fields.Paths.Order(StringComparer.Ordinal)) is { } nearest
                    ? $"Did you mean {nearest}?" : "Between braces stands the path of a field."));
    }

    [GeneratedRegex(@"\{([^{}]*)\}")]
    private static partial Regex Blank();
}
