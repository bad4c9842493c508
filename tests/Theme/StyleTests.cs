using System.Text.RegularExpressions;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Theme;

/// <summary>Style sheets: what templates use is there, what is there is used, and order alone decides.</summary>
public sealed partial class StyleTests
{
    private static readonly string All = string.Concat(ThemeFiles.Styles.Values);

    [Fact]
    public void Every_class_of_a_template_has_a_style()
    {
        var styled = Styled();
        Assert.NotEmpty(Used());
        Assert.All(Used(), used => Assert.True(
            used.EndsWith("--", StringComparison.Ordinal) // a variant whose name the page gives
                ? styled.Any(s => s.StartsWith(used, StringComparison.Ordinal))
                : styled.Contains(used), $"No style for .{used}"));
    }

    [Fact]
    public void Every_class_with_a_style_is_used()
    {
        var used = Used();
        Assert.All(Styled(), styled => Assert.True(
            used.Contains(styled) || used.Any(u => u.EndsWith("--", StringComparison.Ordinal) &&
                styled.StartsWith(u, StringComparison.Ordinal)), $"Nothing uses .{styled}"));
    }

    [Fact]
    public void Both_papers_that_a_shop_can_choose_have_a_style() =>
        Assert.All(["paper--a4", "paper--letter"], paper => Assert.Contains(paper, Styled()));

    [Fact]
    public void No_rule_shouts_and_none_goes_by_id()
    {
        Assert.DoesNotContain("!important", All, StringComparison.Ordinal);
        Assert.All(Selectors(), s => Assert.DoesNotMatch("#[A-Za-z]", s));
    }

    [Fact]
    public void No_selector_is_deeper_than_two() =>
        Assert.All(Selectors().SelectMany(s => s.Split(',')), s =>
            Assert.True(s.Trim().Split([' ', '>', '+', '~'], StringSplitOptions.RemoveEmptyEntries).Length <= 2, s));

    [Fact]
    public void Nothing_is_loaded_by_a_style_sheet() =>
        Assert.DoesNotMatch(@"(?i)@import|url\(|@font-face|https?:", All);

    [Fact]
    public void The_order_names_every_sheet_once()
    {
        var order = File.ReadAllLines(Path.Combine(ThemeFiles.Folder, "css", "order.txt")).Where(l => l.Length > 0);
        Assert.Equal(ThemeFiles.Styles.Keys, order.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_sheets_stay_within_1110_lines() =>
        Assert.InRange(Repository.Files("themes/riffle/css", "*.css").Sum(f => File.ReadLines(f).Count()), 1, 1110);

    [Fact]
    public void Every_custom_property_is_defined_and_used()
    {
        static List<string> Names(MatchCollection found) =>
            [.. found.Select(m => m.Groups[1].Value).Distinct().Order(StringComparer.Ordinal)];
        var (defined, used) = (Names(Defined().Matches(All)), Names(Var().Matches(All)));
        Assert.NotEmpty(defined);
        Assert.Equal(defined, used);
    }

    [Fact]
    public void Raw_colours_stay_in_the_tokens() =>
        Assert.All(ThemeFiles.Styles.Where(s => s.Key != "tokens.css"), sheet =>
            Assert.DoesNotMatch(@"--(slate|stream|copper)-|light-dark\(", sheet.Value));

    [Fact]
    public void The_script_touches_only_what_the_templates_have_and_writes_no_markup()
    {
        var scripts = Repository.Files("themes/riffle/js", "*.js").Select(File.ReadAllText).ToList();
        Assert.NotEmpty(scripts);
        foreach (var script in scripts)
        {
            Assert.DoesNotMatch(@"innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\b", script);
            Assert.DoesNotMatch(@"fetch\(|https?:|\bimport\b", script);
            Assert.All(Query().Matches(script).Select(m => m.Groups[1].Value), name => Assert.Contains(name, Used()));
        }
    }

    private static HashSet<string> Used() =>
    [
        .. ThemeFiles.Templates.Values.SelectMany(t => Class().Matches(ThemeFiles.WithoutCode(t)))
            .SelectMany(m => m.Groups[1].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)),
    ];

    private static HashSet<string> Styled() =>
        [.. Selectors().SelectMany(s => ClassName().Matches(s)).Select(m => m.Groups[1].Value)];

    private static IEnumerable<string> Selectors() =>
        Selector().Matches(All).Select(m => m.Groups[1].Value.Trim()).Where(s => s.Length > 0 && s[0] != '@');

    [GeneratedRegex(@"\sclass=""([^""]*)""")]
    private static partial Regex Class();

    [GeneratedRegex(@"\.([a-z][\w-]*)")]
    private static partial Regex ClassName();

    [GeneratedRegex(@"([^{};]+)\{")]
    private static partial Regex Selector();

    [GeneratedRegex(@"[{;]\s*(--[\w-]+)\s*:")]
    private static partial Regex Defined();

    [GeneratedRegex(@"var\((--[\w-]+)")]
    private static partial Regex Var();

    [GeneratedRegex(@"querySelector(?:All)?\(""\.([\w-]+)""\)")]
    private static partial Regex Query();
}
