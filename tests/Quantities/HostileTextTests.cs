using System.Diagnostics;
using CareSheets.Quantities;
using CsCheck;

namespace CareSheets.Tests.Quantities;

public class HostileTextTests
{
    private const int TwoMegabytes = 2 * 1024 * 1024;

    private static readonly string[] Known =
    [
        "2", "7", "0", ".", ",", "-", "–", "−", "°C", "F", "in", "TL", "SL", "to", " ", "\0", "e",
        "E", "+", "/", "½", "٢", "pH", ">", "≤", "CaCO3", "gal", "\"", "🐟", "\uD83D", "\t",
        "\u200B",
    ];

    private static readonly Gen<string> Scraps = Gen.Int[0, Known.Length - 1].Select(i => Known[i]);

    public static TheoryData<string> LongTexts() =>
    [
        new string('1', TwoMegabytes),
        new string('-', TwoMegabytes),
        new string(' ', TwoMegabytes),
        new string('C', TwoMegabytes),
        new string('\0', TwoMegabytes),
        new string(',', TwoMegabytes),
        "2" + new string(' ', TwoMegabytes) + "X",
        Repeated("1,"), Repeated("1,000"), Repeated("22 "), Repeated("22–"), Repeated("to "),
        Repeated("- "), Repeated("1e"), Repeated("22 C – "), Repeated("🐟"), Repeated("½."),
    ];

    [Theory]
    [MemberData(nameof(LongTexts), DisableDiscoveryEnumeration = true)]
    public void Two_megabytes_are_refused_at_once(string text)
    {
        var clock = Stopwatch.StartNew();
        var problem = Parse(text).Problem;

        // Measured: below 0.1 s each; a scan that looked back would take hours.
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), $"{clock.Elapsed}");
        Assert.All(problem.Values, pair => Assert.True(pair.Value.Length <= 60, pair.Key));
    }

    [Fact]
    public void Any_amount_of_space_is_only_space() =>
        Assert.Equal("2 °C", Parse("2" + new string(' ', TwoMegabytes) + "C").Value.Text);

    [Theory]
    [InlineData("\0")]
    [InlineData("22\0–26 °C")]
    [InlineData("22–26 🐟")]
    [InlineData("22–26 \uD83D")]
    [InlineData("22 \u200B°C")]
    public void Strange_characters_are_a_problem_with_printable_values(string text)
    {
        var problem = Parse(text).Problem;

        Assert.All(problem.Values.Values, value =>
            Assert.True(value.IsNormalized() && !value.Any(char.IsControl), value));
    }

    [Theory]
    [InlineData(13)]
    [InlineData(400)]
    public void More_than_twelve_digits_are_no_number(int digits)
    {
        var figure = new string('9', digits);

        Assert.Equal(QuantityProblemKind.NotANumber, KindOf($"{figure} °C"));
        Assert.Equal(QuantityProblemKind.NotANumber, KindOf($"0.{figure} °C"));
        Assert.True(Parse($"{figure[..6]}.{figure[..6]} °C").Ok);
        Assert.True(Parse($"{figure[..12]} °C").Ok);
    }

    [Fact]
    public void No_jumble_of_scraps_makes_the_reader_throw() =>
        Gen.Select(Scraps.Array[0, 12].Select(string.Concat), Gen.Bool).Sample(
            (text, basis) =>
            {
                foreach (var dimension in DimensionCatalogue.All)
                {
                    var result = QuantityText.Parse(text, dimension, basis);
                    Assert.True(result.Ok || IsInside(result.Problem, text), text);
                }
            },
            iter: 5000);

    private static ParseResult<StatedRange> Parse(string text) =>
        QuantityText.Parse(text, DimensionCatalogue.Temperature);

    private static QuantityProblemKind KindOf(string text) => Parse(text).Problem.Kind;

    private static bool IsInside(QuantityProblem problem, string text) =>
        problem.Index >= 0 && problem.Length >= 0 && problem.Index + problem.Length <= text.Length;

    private static string Repeated(string part) =>
        string.Concat(Enumerable.Repeat(part, TwoMegabytes / part.Length));
}
