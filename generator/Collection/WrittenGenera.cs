using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>
/// Genera that are known to exist, from the program's list and from the entries: where a file and the name in it
/// differ, the one with a known genus is likely to be the right one.
/// </summary>
internal sealed class WrittenGenera(IReadOnlyList<Entry> entries)
{
    private readonly ILookup<string, string> _entriesByGenus = entries.ToLookup(e => e.Genus, e => e.Name);

    public string Hint(Entry entry)
    {
        var name = entry.ScientificName.Value;
        var rename = $"{name.Slug}.md";
        if (FileName(entry) is not { } file)
            return $"Rename it to {rename}.";
        return IsKnown(file.Genus, entry) && !IsKnown(name.Genus, entry)
            ? $"Write {file}, as the file is called; no genus {name.Genus} is known here. If there is one, rename " +
              $"the file to {rename}."
            : $"Rename it to {rename}, or write {file} if the file is right.";
    }

    private static ScientificName? FileName(Entry entry)
    {
        var words = entry.Name.Split('-');
        if (words.Length is not (2 or 3) || words[0].Length < 2)
            return null;
        var genus = char.ToUpperInvariant(words[0][0]) + words[0][1..];
        return ScientificName.Parse($"{genus} {string.Join(' ', words[1..])}");
    }

    private bool IsKnown(string genus, Entry entry) =>
        GenusTable.Known.Find(genus) is not null || _entriesByGenus[genus].Any(other => other != entry.Name);
}
