using System.Text.Json;
using System.Text.RegularExpressions;
using CareSheets.Collection;
using CareSheets.Quantities;
using CareSheets.Regulations;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Theme;

/// <summary>Words: none missing, none too many, in templates, in the schema and in the program.</summary>
public sealed partial class ThemeWordTests
{
    [Fact]
    public void Every_word_that_a_template_uses_is_there_and_the_reverse()
    {
        var used = ThemeFiles.Templates.Values.SelectMany(ThemeFiles.Code).SelectMany(c => Word().Matches(c))
            .Select(m => m.Groups[1].Value).Distinct().Order(StringComparer.Ordinal).ToList();
        Assert.True(used.Count > 40);
        Assert.Equal(used, Keys("page").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_word_of_the_schema_has_its_label_and_no_label_is_left_over()
    {
        using var schema = JsonDocument.Parse(File.ReadAllText(Repository.At("schema", "entry.schema.json")));
        var groups = Enums(schema.RootElement.GetProperty("properties")).ToList();
        Assert.True(groups.Count >= 13, $"Only {groups.Count} lists of words were found.");
        foreach (var group in groups.GroupBy(g => g.Name))
            Assert.Equal(
                (group.Key, string.Join('|', group.SelectMany(g => g.Words).Distinct().Order(StringComparer.Ordinal))),
                (group.Key, string.Join('|', Keys(group.Key).Order(StringComparer.Ordinal))));
    }

    [Theory]
    [InlineData("rank", typeof(TaxonRank))]
    [InlineData("kind", typeof(RangeKind))]
    [InlineData("about_kind", typeof(RangeKind))]
    [InlineData("evidence", typeof(EvidenceKind))]
    [InlineData("about_evidence", typeof(EvidenceKind))]
    [InlineData("basis", typeof(LengthBasis))]
    [InlineData("topic", typeof(AdviceTopic))]
    [InlineData("law_effect", typeof(RegulationEffect))]
    public void Every_kind_that_the_program_knows_has_its_words(string group, Type kind) =>
        Assert.Equal(Enum.GetNames(kind).Order(StringComparer.Ordinal), Keys(group).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_sentence_is_used_by_the_program()
    {
        var program = string.Concat(Repository.Files("generator/Pages", "*.cs").Select(File.ReadAllText));
        string[] composed = ["sentence.orders_", "sentence.families_", "sentence.genera_"];
        var sentences = ThemeFiles.Words.Keys.Where(k => Groups().IsMatch(k) && !composed.Any(k.StartsWith)).ToList();
        Assert.True(sentences.Count > 40);
        Assert.All(sentences, key =>
            Assert.Contains($"\"{Counted().Replace(key, "")}\"", program, StringComparison.Ordinal));
    }

    [Fact]
    public void Months_are_twelve() =>
        Assert.Equal("1 2 3 4 5 6 7 8 9 10 11 12", string.Join(' ', Keys("month")));

    [Fact]
    public void Names_of_countries_are_for_codes_that_exist() =>
        Assert.All(Keys("country"), code => Assert.NotNull(CountryCatalogue.Find(code)));

    [Fact]
    public void No_word_is_empty() =>
        Assert.All(ThemeFiles.Words, word => Assert.False(string.IsNullOrWhiteSpace(word.Value), word.Key));

    private static IEnumerable<string> Keys(string group) =>
        ThemeFiles.Words.Keys.Where(k => k.StartsWith(group + ".", StringComparison.Ordinal))
            .Select(k => k[(group.Length + 1)..]);

    /// <summary>Lists of allowed words by the name of their property: <c>own kind</c> is ownKind.</summary>
    private static IEnumerable<(string Name, IReadOnlyList<string> Words)> Enums(JsonElement properties)
    {
        foreach (var property in properties.EnumerateObject())
        {
            var held = property.Value.TryGetProperty("items", out var items) ? items : property.Value;
            if (held.TryGetProperty("enum", out var words))
                yield return (Camel(property.Name), [.. words.EnumerateArray().Select(w => w.GetString()!)]);
            if (property.Value.TryGetProperty("properties", out var inner))
            {
                foreach (var found in Enums(inner))
                    yield return found;
            }
        }
    }

    private static string Camel(string name) => Space().Replace(name, m => m.Groups[1].Value.ToUpperInvariant());

    [GeneratedRegex(@"\bword\.(\w+)")]
    private static partial Regex Word();

    [GeneratedRegex(" ([a-z])")]
    private static partial Regex Space();

    [GeneratedRegex("^(sentence|fact|menu)\\.")]
    private static partial Regex Groups();

    [GeneratedRegex("_(one|many)$")]
    private static partial Regex Counted();
}
