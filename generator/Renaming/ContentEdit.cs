using CareSheets.Collection;
using CareSheets.Paper;

namespace CareSheets.Renaming;

/// <summary>A file of the content as a change of name leaves it.</summary>
/// <param name="From">Path within the content folder, with forward slashes.</param>
/// <param name="To">Its path afterwards.</param>
public sealed record ContentEdit(string From, string To, string Text)
{
    /// <summary>What the moves do to every file of the content that they touch, by path.</summary>
    public static IReadOnlyList<ContentEdit> Of(
        string contentFolder, IReadOnlyList<NameMove> moves, SpeciesCollection before)
    {
        var emptied = EmptiedGenus.Of(moves, before);
        var bySlug = moves.ToDictionary(m => $"species/{m.Entry.Name}.md");
        return
        [
            .. Files(contentFolder)
                .Select(path => Of(path, File.ReadAllText(Path.Combine(contentFolder, path)), bySlug, emptied))
                .OfType<ContentEdit>(),
        ];
    }

    private static ContentEdit? Of(
        string path, string text, Dictionary<string, NameMove> moves, IReadOnlyList<EmptiedGenus> emptied)
    {
        var edited = path == PrintedText.FileName ? PrintedEdit.Apply(text, moves.Values)
            : path.EndsWith(".yaml", StringComparison.Ordinal) ? TaxonEdit.Apply(text, [.. moves.Values], emptied)
            : CompanyEdit.Apply(text, [.. moves.Values], emptied);
        foreach (var move in moves.Values)
            edited = MentionEdit.Apply(edited, move.Entry.Name, move.Name.Slug);
        var own = moves.GetValueOrDefault(path);
        if (own is not null)
            edited = EntryEdit.Apply(edited, own);
        var to = own is null ? path : $"species/{own.Name.Slug}.md";
        return edited == text ? null : new ContentEdit(path, to, edited);
    }

    /// <summary>Every file of the content that people write, by its path in the folder.</summary>
    internal static IEnumerable<string> Files(string folder) =>
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(p => p.EndsWith(".md", StringComparison.Ordinal) || p.EndsWith(".yaml", StringComparison.Ordinal))
            .Select(p => Path.GetRelativePath(folder, p).Replace('\\', '/'))
            .Where(p => !p.Split('/').Any(part => part.StartsWith('.')))
            .Order(StringComparer.Ordinal);
}
