using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Reading;

public sealed partial class ContentReader
{
    /// <summary>
    /// The same content after one entry was written anew. An entry that is not whole now is left out, as in a
    /// full reading.
    /// </summary>
    /// <param name="content">As this reader read it, fully or again.</param>
    /// <param name="name">Name of the entry, which may be a new one.</param>
    /// <param name="own">Takes what there is to say of its file.</param>
    /// <exception cref="InvalidOperationException">Nothing has been read before.</exception>
    public Content ReadAgain(Content content, string name, DiagnosticBag own)
    {
        var schema = _schema ?? throw new InvalidOperationException("The content has not been read yet.");
        var (entry, found) = ReadEntry(Path.Combine(contentFolder, "species", name + ".md"), schema);
        own.Add(found);
        var known = content.Known;
        var all = content.Entries.Concat(content.Unfinished).Where(e => e.Name != name).Append(entry).OfType<Entry>()
            .OrderBy(e => e.Name, StringComparer.Ordinal).ToList();
        return content with
        {
            Entries = [.. all.Where(e => e.IsWhole)],
            Unfinished = [.. all.Where(e => !e.IsWhole)],
            Known = known with
            {
                Entries = known.Entries.Append(name).ToHashSet(),
                Unread = With(known.Unread, name, entry is not { IsWhole: true }),
                Drafts = With(known.Drafts, name, found.Any(d => d.Code == ReadingCodes.Draft)),
            },
        };
    }

    private static HashSet<string> With(IReadOnlySet<string> names, string name, bool isOne) =>
        names.Where(n => n != name).Concat(isOne ? [name] : Array.Empty<string>()).ToHashSet();
}
