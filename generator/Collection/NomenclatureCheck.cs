using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Names.Matching;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>What the Code of nomenclature makes checkable in an entry, beyond parentheses.</summary>
internal static class NomenclatureCheck
{
    public static IEnumerable<Diagnostic> Check(Entry entry) => [.. Ending(entry), .. Year(entry), .. Epithet(entry)];

    private static IEnumerable<Diagnostic> Epithet(Entry entry)
    {
        var (name, original) = (entry.ScientificName.Value, entry.OriginalName.Value);
        if (SpellingKey.Of(Last(name)) != SpellingKey.Of(Last(original)))
            yield return Diagnostic.Of(NomenclatureCodes.OtherEpithet, entry.OriginalName.Span,
                ("name", name.ToString()), ("original", original.ToString()));
    }

    private static IEnumerable<Diagnostic> Ending(Entry entry)
    {
        var name = entry.ScientificName.Value;
        if (GenderEnding.For(name.Genus, name.Epithet, GenusTable.Known) is { } expected && expected != name.Epithet)
            yield return Diagnostic.Of(NomenclatureCodes.Ending, entry.ScientificName.Span,
                ("epithet", name.Epithet), ("genus", name.Genus), ("expected", expected),
                ("gender", GenusTable.Known.Find(name.Genus)!.Gender!.Value.ToString().ToLowerInvariant()));
    }

    private static IEnumerable<Diagnostic> Year(Entry entry)
    {
        var name = entry.ScientificName.Value.ToString();
        if (WrittenAuthor.Read(entry.Authorship.Value.Text)?.Year is not { } year)
            yield break;
        var code = year < WrittenAuthor.FirstYear ? NomenclatureCodes.BeforeNames
            : year > entry.Reviewed.Year ? NomenclatureCodes.NamedLater
            : null;
        if (code is not null)
            yield return Diagnostic.Of(code, entry.Authorship.Span,
                ("name", name), ("year", year.ToString(CultureInfo.InvariantCulture)));
    }

    private static string Last(ScientificName name) => name.Subspecies ?? name.Epithet;
}
