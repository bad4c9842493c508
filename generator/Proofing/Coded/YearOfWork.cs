using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// The year behind the name is that of the author's work among the references, if one is listed. Only remarked: a
/// work may have appeared in another year than the one printed on it.
/// </summary>
internal sealed class YearOfWork(IReadOnlyDictionary<string, Reference> references) : ICodedRule
{
    public static readonly CodedText Text = new(
        "year-is-that-of-the-work", Severity.Note,
        "The year of the name is not that of its author's work below", "Correct the year, here or in references.yaml.",
        "The year behind a name is the one in which its description appeared", "ICZN Code, Art. 22");

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry)
    {
        if (WrittenAuthor.Read(entry.Authorship.Value.Text)?.Year is not { } year || Surname(entry) is not { } first)
            return [];
        var works = entry.References.Where(r => references.ContainsKey(r.Value))
            .Where(r => references[r.Value].Author.Contains(first, StringComparison.OrdinalIgnoreCase)).ToList();
        if (works.Count == 0 || works.Exists(w => references[w.Value].Year == year))
            return [];
        var work = references[works[0].Value];
        return [Text.Breach(entry, entry.Authorship.Span, "scientificNameAuthorship",
            $"{Number(year)} here, {Number(work.Year)} in {work.Key.Value}",
            new RelatedSpan(works[0].Span, $"{work.Key.Value} is listed here"))];
    }

    /// <summary>The first author as written before the first comma or ampersand.</summary>
    private static string? Surname(Entry entry)
    {
        var name = entry.Authorship.Value.Text.Trim('(', ')').Split(',', '&')[0].Trim();
        return name.Length > 1 ? name : null;
    }

    private static string Number(int year) => year.ToString(CultureInfo.InvariantCulture);
}
