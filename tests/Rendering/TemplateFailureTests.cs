using CareSheets.Diagnostics;

namespace CareSheets.Tests.Rendering;

/// <summary>A template that asks for what is not there fails at its line instead of printing nothing.</summary>
public sealed class TemplateFailureTests
{
    [Theory]
    [InlineData("{{ nothing }}")]
    [InlineData("{{ page.nothing }}")]
    [InlineData("{{ page.frame.nothing }}")]
    [InlineData("{{ word.nothing }}")]
    [InlineData("{{ page.nothing.more }}")]
    [InlineData("{{ page.items[7].size }}")]
    [InlineData("{{ include 'parts/nothing.html' }}")]
    [InlineData("{{ include '../../etc/passwd' }}")]
    public void A_name_that_is_not_there_is_told(string template)
    {
        var told = TemplateDesk.Failure(template);
        Assert.Equal(TemplateCodes.Failed, told.Code);
        Assert.Contains("(test.html)", told.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{{ date.now }}")]
    [InlineData("{{ math.random 1 9 }}")]
    [InlineData("{{ math.uuid }}")]
    [InlineData("{{ object.eval '1' }}")]
    [InlineData("{{ object.eval_template page.text }}")]
    [InlineData("{{ html.escape page.text }}")]
    [InlineData("{{ regex.replace page.text 'a' 'b' }}")]
    public void Functions_that_differ_from_run_to_run_or_run_text_are_not_there(string template) =>
        Assert.Equal(TemplateCodes.Failed, TemplateDesk.Failure(template).Code);

    [Fact]
    public void The_failure_is_told_at_its_line_and_column()
    {
        var span = TemplateDesk.Failure("<p>\n  {{ page.nothing }}").Span;
        Assert.Equal("pages/test.html", span.File);
        Assert.Equal(new SourcePosition(2, 11), span.Start);
    }

    [Fact]
    public void The_failure_of_a_part_is_told_in_the_part()
    {
        var span = TemplateDesk.Failure("{{ include 'parts/p.html' }}", ("parts/p.html", "\n\n{{ nothing }}")).Span;
        Assert.Equal("parts/p.html", span.File);
        Assert.Equal(new SourcePosition(3, 4), span.Start);
    }

    [Theory]
    [InlineData("{{ word.hello = 'changed' }}")]
    [InlineData("{{ page.text = 'changed' }}")]
    public void A_template_changes_neither_words_nor_page(string template) =>
        Assert.Equal(TemplateCodes.Failed, TemplateDesk.Failure(template).Code);

    [Fact]
    public void A_loop_without_end_ends() =>
        Assert.Equal(TemplateCodes.Failed, TemplateDesk.Failure("{{ while true }}{{ end }}").Code);

    [Fact]
    public void A_part_that_calls_itself_ends() =>
        Assert.Equal(TemplateCodes.Failed, TemplateDesk.Failure(
            "{{ include 'parts/p.html' }}", ("parts/p.html", "{{ include 'parts/p.html' }}")).Code);

    /// <summary>RenderAsync writes past the escaping: measured with Scriban 7.5.3.</summary>
    [Fact]
    public void Nobody_renders_in_the_way_that_does_not_escape()
    {
        var files = Support.Repository.Files("generator", "*.cs").ToList();
        Assert.Contains(files, f => f.EndsWith("PageRenderer.cs", StringComparison.Ordinal));
        Assert.DoesNotContain(files, f => File.ReadAllText(f).Contains(".RenderAsync(", StringComparison.Ordinal));
    }
}
