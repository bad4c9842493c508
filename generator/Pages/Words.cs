using System.Collections.Concurrent;
using CareSheets.Diagnostics;

namespace CareSheets.Pages;

/// <summary>
/// Every visible word of the interface, from the theme. A word that the theme lacks is told as an
/// error and shown by its key, so that one run names them all.
/// </summary>
public sealed class Words(IReadOnlyDictionary<string, string> texts, string file)
{
    private readonly ConcurrentDictionary<string, Diagnostic> _missing = new();

    public string Language => this["theme.language"];

    public string this[string key]
    {
        get
        {
            if (texts.TryGetValue(key, out var text))
                return text;
            _missing.TryAdd(key, Diagnostic.Of(TemplateCodes.NoWord, SourceSpan.WholeFile(file), ("key", key)));
            return key;
        }
    }

    /// <summary>What was asked for and is not there, so far.</summary>
    public IEnumerable<Diagnostic> Missing => _missing.Values;

    /// <summary>A text for which the theme may have words, else the one given.</summary>
    public string Or(string key, string otherwise) => texts.GetValueOrDefault(key, otherwise);

    /// <summary>A sentence with its <c>{blanks}</c> filled.</summary>
    public string Say(string key, params (string Blank, string Value)[] values)
    {
        var sentence = this[key];
        foreach (var (blank, value) in values)
        {
            if (!sentence.Contains("{" + blank + "}", StringComparison.Ordinal) && texts.ContainsKey(key))
                _missing.TryAdd($"{key} {blank}", Diagnostic.Of(TemplateCodes.MissingBlank,
                    SourceSpan.WholeFile(file), ("key", key), ("blank", "{" + blank + "}")));
        }
        return Blanks.Fill(sentence, values);
    }

    /// <summary>
    /// One or many: <c>key_one</c> or <c>key_many</c>, with the number as <c>{count}</c> in the latter.
    /// </summary>
    public string Count(string key, int count) => count == 1
        ? this[key + "_one"]
        : Say(key + "_many", ("count", count.ToString(System.Globalization.CultureInfo.InvariantCulture)));

    /// <summary>The words of one group, for templates.</summary>
    public IEnumerable<(string Name, string Text)> Group(string group) =>
        texts.Where(t => t.Key.StartsWith(group + ".", StringComparison.Ordinal))
            .Select(t => (t.Key[(group.Length + 1)..], t.Value));
}
