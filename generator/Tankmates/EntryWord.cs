using CareSheets.Diagnostics;

namespace CareSheets.Tankmates;

/// <summary>Words of an entry as values with an order: <c>very high</c> is <c>VeryHigh</c>, and back.</summary>
internal static class EntryWord
{
    /// <exception cref="InvalidOperationException">The schema allows a word that is not known here.</exception>
    public static T Required<T>(Sourced<string> word)
        where T : struct, Enum
    {
        var plain = word.Value.Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);
        return Enum.TryParse<T>(plain, ignoreCase: true, out var value)
            ? value
            : throw new InvalidOperationException($"{word.Value} is no word for {typeof(T).Name}.");
    }

    /// <summary>As the schema writes it, which is also the theme's key.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum
    {
        var name = value.ToString();
        return value is BodyShape.EelLike ? "eel-like" : string.Concat(name.Select((c, i) =>
            i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
    }
}
