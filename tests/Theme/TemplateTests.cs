using System.Text.RegularExpressions;

namespace CareSheets.Tests.Theme;

/// <summary>Templates arrange: words come from the words file, and nothing is decided or computed.</summary>
public sealed partial class TemplateTests
{
    [Theory]
    [MemberData(nameof(ThemeFiles.Names), MemberType = typeof(ThemeFiles))]
    public void No_visible_letter_stands_in_a_template(string name)
    {
        var text = Tag().Replace(ThemeFiles.WithoutCode(ThemeFiles.Templates[name]), " ");
        Assert.DoesNotContain(text, char.IsLetter);
    }

    [Theory]
    [MemberData(nameof(ThemeFiles.Names), MemberType = typeof(ThemeFiles))]
    public void No_letter_stands_in_an_attribute_that_people_read_or_hear(string name)
    {
        foreach (Match tag in Tag().Matches(ThemeFiles.WithoutCode(ThemeFiles.Templates[name])))
        {
            var read = Read().Matches(tag.Value).Select(m => m.Groups[2].Value)
                .Concat(tag.Value.Contains("name=\"description\"", StringComparison.Ordinal)
                    ? Content().Matches(tag.Value).Select(m => m.Groups[1].Value) : []);
            Assert.All(read, value => Assert.DoesNotContain(value, char.IsLetter));
        }
    }

    [Theory]
    [MemberData(nameof(ThemeFiles.Names), MemberType = typeof(ThemeFiles))]
    public void A_template_begins_with_a_comment_of_its_name_and_what_it_is_given(string name) =>
        Assert.Matches($@"^\{{\{{- # {Regex.Escape(name)}: \S.+ -\}}\}}\n", ThemeFiles.Templates[name]);

    [Theory]
    [MemberData(nameof(ThemeFiles.Names), MemberType = typeof(ThemeFiles))]
    public void A_template_has_no_style_no_handler_and_no_address_of_another_host(string name)
    {
        var text = ThemeFiles.Templates[name];
        Assert.DoesNotMatch(@"(?i)\sstyle\s*=|<style|\son[a-z]+\s*=|<script(?![^>]*\ssrc=)", text);
        Assert.DoesNotMatch(@"(?i)https?:|=[""']//|javascript:|<iframe|<base\b", text);
        Assert.DoesNotMatch(@"=\s*\{\{", text); // an attribute without quotes ends at the first space
    }

    [Theory]
    [MemberData(nameof(ThemeFiles.Names), MemberType = typeof(ThemeFiles))]
    public void A_template_only_prints_includes_repeats_and_chooses(string name)
    {
        var code = ThemeFiles.Code(ThemeFiles.Templates[name]).Select(c => c.Trim('-', '~', ' ', '\n'));
        foreach (var statement in code.Where(c => !c.StartsWith('#')))
        {
            Assert.Matches(Allowed(), statement);
            Assert.DoesNotMatch(@"\w\.\w+\.\w+\.\w", statement);
        }
    }

    [Fact]
    public void Every_part_is_there_is_used_and_gets_what_its_comment_names()
    {
        var calls = ThemeFiles.Templates.Values.SelectMany(t => Include().Matches(t)).ToList();
        Assert.NotEmpty(calls);
        foreach (var call in calls)
        {
            Assert.True(ThemeFiles.Templates.TryGetValue(call.Groups[1].Value, out var part), call.Value);
            var named = Parameter().Matches(part.Split('\n')[0]).Select(m => m.Value).Distinct().Count();
            Assert.Equal((call.Value, named), (call.Value, call.Groups[2].Captures.Count));
        }
        Assert.Equal(
            ThemeFiles.Templates.Keys.Where(k => k.StartsWith("parts/", StringComparison.Ordinal)),
            calls.Select(c => c.Groups[1].Value).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_part_uses_the_parameters_that_its_comment_names()
    {
        foreach (var (name, text) in ThemeFiles.Templates)
        {
            var lines = text.Split('\n', 2);
            Assert.Equal((name, Parameters(lines[0])), (name, Parameters(lines[1])));
        }
    }

    private static string Parameters(string text) =>
        string.Join(' ', Parameter().Matches(text).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal));

    [GeneratedRegex("<[^>]*>|&[a-z]+;")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s(title|alt|aria-label|aria-description|placeholder)=""([^""]*)""")]
    private static partial Regex Read();

    [GeneratedRegex(@"\scontent=""([^""]*)""")]
    private static partial Regex Content();

    [GeneratedRegex("""
        ^(end|else|for\ \w+\ in\ [$\w.]+|if\ !?[$\w.]+(\ (!=|==|>)\ (""|0))?
        |include\ '[\w/-]+\.html'(\ [$\w.]+|\ \(include\ '[\w/-]+\.html'(\ [$\w.]+)*\))*|[$\w.]+)$
        """, RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex Allowed();

    /// <summary>An argument is a value, or what another part prints, in parentheses.</summary>
    [GeneratedRegex(@"include '([^']+)'( [$\w.]+| \([^)]*\))*")]
    private static partial Regex Include();

    [GeneratedRegex(@"\$\d")]
    private static partial Regex Parameter();
}
