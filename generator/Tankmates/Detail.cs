using CareSheets.Quantities;

namespace CareSheets.Tankmates;

/// <summary>A figure or word of one species that fills a blank in the sentence of a reason.</summary>
/// <param name="Blank">Name of the blank, such as <c>length</c>.</param>
/// <param name="Dimension">Of <paramref name="Range"/>; nothing for a word.</param>
/// <param name="Rounding">Which way the figure may be rounded for readers.</param>
/// <param name="Word">Key of a word in the theme, or of the words around a figure; or empty.</param>
public sealed record Detail(string Blank, Dimension? Dimension, Stretch Range, Rounding Rounding, string Word)
{
    public static Detail Figure(string blank, Dimension dimension, Stretch range, Rounding rounding) =>
        new(blank, dimension, range, rounding, "");

    /// <summary>
    /// A range that may be unknown. Its ends go to the nearest figures, so that the end of one range and the
    /// beginning of another, told in one sentence, come out alike in either system of units.
    /// </summary>
    public static Detail Of(string blank, Dimension dimension, Stretch? range) =>
        range is { } known ? Figure(blank, dimension, known, Rounding.Nearest) : OfWord(blank, "sentence.unknown");

    public static Detail OfWord(string blank, string key) => new(blank, null, default, default, key);

    /// <summary>A word of the schema that may be unknown, by the theme's group of such words.</summary>
    public static Detail OfWord<T>(string blank, string group, T? word)
        where T : struct, Enum =>
        OfWord(blank, word is { } known ? $"{group}.{EntryWord.Of(known)}" : "sentence.unknown");
}
