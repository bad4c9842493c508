using System.Collections.Frozen;
using CareSheets.Names;

namespace CareSheets.PackingLists;

/// <summary>What a word of a list says.</summary>
internal enum WordKind
{
    Provenance,
    Sex,
    Size,

    /// <summary>Two things; a person has to say which.</summary>
    Either,

    /// <summary>A colour or a cultivated form.</summary>
    Form,

    /// <summary>
    /// A word of customers' names, and never an epithet: molly, ornate. One that means a group stands in headings too.
    /// </summary>
    Everyday,

    /// <summary>A line with it is no fish: totals, freight.</summary>
    Noise,

    /// <summary>A word of sentences, which stands in no name: thanks, are.</summary>
    Remark,
}

/// <summary>A word of list-words.csv.</summary>
internal sealed record ListWord(string Word, WordKind Kind, string Meaning)
{
    /// <summary>Tetras, catfish: a heading where nothing else stands beside it.</summary>
    public bool IsGroup => Kind == WordKind.Everyday && Meaning == "group";

    public bool IsTotal => Kind == WordKind.Noise && Meaning == "total";
}

/// <summary>The marks and words that stand beside names in lists.</summary>
internal static class ListWords
{
    private static readonly FrozenDictionary<string, ListWord> ByWord = DataFile.Rows("list-words.csv")
        .Select(row => new ListWord(row[0], Enum.Parse<WordKind>(row[1], ignoreCase: true), row[2]))
        .ToFrozenDictionary(w => w.Word);

    public static ListWord? Find(string word) =>
        ByWord.GetValueOrDefault(word.Trim('.', ',', '(', ')', '/').ToLowerInvariant()) ??
        ByWord.GetValueOrDefault(Slug.From(word).Replace("-", "", StringComparison.Ordinal));
}
