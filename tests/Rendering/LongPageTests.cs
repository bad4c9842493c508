using System.Text;
using CareSheets.Diagnostics;

namespace CareSheets.Tests.Rendering;

/// <summary>Long pages and many pages at once: nothing is cut, nothing is mixed up.</summary>
public sealed class LongPageTests
{
    /// <summary>Scriban cuts at 1,048,576 characters unless told otherwise.</summary>
    private const int TwoMillion = 2_000_000;

    [Fact]
    public void A_template_of_two_million_characters_is_not_cut()
    {
        var text = new string('a', TwoMillion) + "END";
        Assert.Equal(text, TemplateDesk.Render(text));
    }

    [Fact]
    public void A_value_of_two_million_characters_is_not_cut()
    {
        var text = new string('b', TwoMillion) + "END";
        Assert.Equal(text, TemplateDesk.Render("{{ page.text }}", text));
        Assert.Equal(text, TemplateDesk.Render(
            "{{ include 'parts/p.html' }}", text, ("parts/p.html", "{{ page.text }}")));
    }

    [Fact]
    public void Two_million_characters_in_small_pieces_are_not_cut()
    {
        var text = TemplateDesk.Render("{{ for i in 1..20000 }}{{ page.text }}{{ end }}END", new string('c', 100));
        Assert.Equal(TwoMillion + 3, text.Length);
        Assert.EndsWith("cEND", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Loops_within_loops_go_on_beyond_a_thousand_rounds() =>
        Assert.Equal(1600, TemplateDesk.Render(
            "{{ for i in 1..40 }}{{ for j in 1..40 }}x{{ end }}{{ end }}").Length);

    [Fact]
    public void Pages_rendered_at_the_same_time_are_those_rendered_one_after_the_other()
    {
        const string template =
            "{{ own = page.text }}{{ include 'parts/p.html' own }}{{ for t in page.items }}{{ t }}{{ end }}";
        var renderer = TemplateDesk.Renderer(template, ("parts/p.html", "<p>{{ $1 }}{{ word.hello }}</p>"));
        string Render(int number) => renderer.Render(TestPage.With($"<{number}>"), new DiagnosticBag())!;

        var apart = Enumerable.Range(0, 2000).Select(Render).ToList();
        var together = Enumerable.Range(0, 2000).AsParallel().AsOrdered().WithDegreeOfParallelism(8)
            .Select(Render).ToList();
        Assert.Equal(apart, together);
        Assert.Equal("<p>&lt;7&gt;Hello &amp; &lt;welcome&gt;</p>onetwo", apart[7]);
    }

    [Fact]
    public void What_one_page_sets_is_unknown_to_the_next()
    {
        var renderer = TemplateDesk.Renderer(
            "{{ if page.text == 'first' }}{{ left = 1 }}{{ else }}{{ left }}{{ end }}");
        Assert.Equal("", renderer.Render(TestPage.With("first"), new DiagnosticBag()));
        Assert.Null(renderer.Render(TestPage.With("second"), new DiagnosticBag()));
    }

    [Fact]
    public void Letters_beyond_ascii_arrive_as_written()
    {
        var text = TemplateDesk.Render("<p>{{ page.text }}</p>", "Inlé °C – 鱼 🐟 µS");
        var parsed = new AngleSharp.Html.Parser.HtmlParser().ParseDocument(text);
        Assert.Equal("Inlé °C – 鱼 🐟 µS", parsed.QuerySelector("p")!.TextContent);
        Assert.Equal(text, Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text)));
    }
}
