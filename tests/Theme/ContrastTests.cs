using System.Text.RegularExpressions;

namespace CareSheets.Tests.Theme;

/// <summary>
/// Contrast of the theme's colours in light and dark, from its tokens: text 4.5 to 1 (WCAG 2.2,
/// 1.4.3), pictures, field borders and the mark of focus 3 to 1 (1.4.11).
/// </summary>
public sealed partial class ContrastTests
{
    private const double Text = 4.5;
    private const double Picture = 3;

    private static readonly (string Front, string Back, double Least)[] Pairs =
    [
        ("text", "surface", Text), ("text-quiet", "surface", Text), ("accent", "surface", Text),
        ("text-band", "surface-band", Text), ("text", "surface-field", Text),
        ("accent-band", "surface-band", Picture), ("water-band", "surface-band", Picture),
        ("line-strong", "surface", Picture), ("line-strong", "surface-field", Picture),
        ("range-fill", "surface", Picture), ("range-inner", "surface", Picture), ("range-scale", "surface", Picture),
    ];

    /// <summary>Hairlines between rows carry no meaning: what they part is apart without them.</summary>
    private static readonly string[] Decoration = ["line"];

    // Computed by other code from the same definition; the middle ones stand on either side of a limit.
    [Theory]
    [InlineData("black", "white", 21)]
    [InlineData("#767676", "#ffffff", 4.542)]
    [InlineData("#777777", "#fff", 4.478)]
    [InlineData("#949494", "white", 3.033)]
    [InlineData("#959595", "white", 2.995)]
    [InlineData("#ff0000", "white", 3.998)]
    [InlineData("white", "#0000ff", 8.592)]
    [InlineData("#008000", "white", 5.137)]
    [InlineData("#ff0000", "#008000", 1.285)]
    public void The_formula_gives_known_values(string one, string other, double ratio) =>
        Assert.Equal(ratio, Contrast.Between(one, other), 0.0006);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Every_pair_of_the_tokens_has_the_contrast_it_needs(int scheme)
    {
        var colours = Tokens(scheme);
        Assert.All(Pairs, pair => AssertPair(pair, colours));
    }

    [Theory]
    [InlineData("print.css", ":root")]
    [InlineData("paper.css", ".paper")]
    public void Every_pair_has_it_on_paper(string sheet, string selector)
    {
        var colours = Tokens(0);
        var block = Regex.Match(ThemeFiles.Styles[sheet], $@"{Regex.Escape(selector)} \{{([^}}]*)\}}").Groups[1].Value;
        var own = Declared().Matches(block).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
        Assert.Contains("text", own.Keys);
        foreach (var (name, value) in own.Where(o => colours.ContainsKey(o.Key)))
            colours[name] = value;
        Assert.All(Pairs.Where(p => own.ContainsKey(p.Back)), pair => AssertPair(pair, colours));
    }

    [Fact]
    public void Every_colour_with_a_meaning_is_in_a_pair()
    {
        var known = Pairs.SelectMany(p => new[] { p.Front, p.Back }).Concat(Decoration).Distinct();
        Assert.Equal(Tokens(0).Keys.Order(StringComparer.Ordinal), known.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void What_it_prefers_stands_out_from_the_band_even_in_grey(int scheme) =>
        Assert.True(Contrast.Between(Tokens(scheme)["range-inner"], Tokens(scheme)["range-fill"]) > 1.5);

    private static void AssertPair((string Front, string Back, double Least) pair, Dictionary<string, string> colours)
    {
        var ratio = Contrast.Between(colours[pair.Front], colours[pair.Back]);
        Assert.True(ratio >= pair.Least, $"{pair.Front} on {pair.Back}: {ratio:0.00} is below {pair.Least}");
    }

    /// <summary>Meanings with their colour in light (0) or dark (1).</summary>
    private static Dictionary<string, string> Tokens(int scheme)
    {
        var text = ThemeFiles.Styles["tokens.css"];
        var raw = Declared().Matches(text).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
        string Resolve(string value) =>
            value.StartsWith("var(--", StringComparison.Ordinal) ? raw[value[6..^1]] : value;
        return Meaning().Matches(text).ToDictionary(
            m => m.Groups[1].Value, m => Resolve(m.Groups[2 + scheme].Value.Trim()));
    }

    [GeneratedRegex(@"--([\w-]+):\s*(#[0-9a-fA-F]{3,8}|white|black);")]
    private static partial Regex Declared();

    [GeneratedRegex(@"--([\w-]+):\s*light-dark\(([^,]+),([^;]+)\);")]
    private static partial Regex Meaning();
}
