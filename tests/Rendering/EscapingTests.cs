namespace CareSheets.Tests.Rendering;

/// <summary>What a template prints is text, unless it is markup that we have made.</summary>
public sealed class EscapingTests
{
    private const string Hostile = """<b>"'&amp;</b>""";
    private const string Escaped = "&lt;b&gt;&quot;&#39;&amp;amp;&lt;/b&gt;";

    [Theory]
    [InlineData("{{ page.text }}")]
    [InlineData("{{ t = page.text; t }}")]
    [InlineData("{{ for t in [page.text] }}{{ t }}{{ end }}")]
    [InlineData("{{ case 1 }}{{ when 1 }}{{ page.text }}{{ end }}")]
    [InlineData("{{ [page.text] | array.join ', ' }}")]
    [InlineData("{{ page.text | string.strip }}")]
    [InlineData("{{ '' + page.text }}")]
    [InlineData("{{ func f }}{{ ret page.text }}{{ end }}{{ f }}")]
    public void Text_is_escaped_whichever_way_it_is_printed(string template) =>
        Assert.Equal(Escaped, TemplateDesk.Render(template, Hostile));

    [Fact]
    public void Text_of_an_attribute_is_escaped() =>
        Assert.Equal($"""<a title="{Escaped}">""", TemplateDesk.Render("""<a title="{{ page.text }}">""", Hostile));

    [Fact]
    public void A_word_of_the_theme_is_text_too() =>
        Assert.Equal("Hello &amp; &lt;welcome&gt;", TemplateDesk.Render("{{ word.hello }}"));

    [Theory]
    [InlineData("Not with Danio rerio.", "Not with <i lang=\"la\">Danio rerio</i>.")]
    [InlineData("<b>Danio rerio</b> & co", "&lt;b&gt;<i lang=\"la\">Danio rerio</i>&lt;/b&gt; &amp; co")]
    public void Scientific_names_of_a_sentence_stand_in_their_own_face(string text, string printed) =>
        Assert.Equal(printed, TemplateDesk.Render("{{ page.sentence }}", text));

    [Theory]
    [InlineData("It wants 26–30 °C (79–86 °F), and", "It wants [26–30 °C] ([79–86 °F]), and")]
    [InlineData("pH 6.0–7.5", "pH [6.0–7.5]")]
    [InlineData("40 in long, 50 US gal, < 175 ppm CaCO₃.", "[40 in] long, [50 US gal], &lt; [175 ppm CaCO₃].")]
    [InlineData("on 25 November 2026; 15 inches, 3 Lamps", "on 25 November 2026; 15 inches, 3 Lamps")]
    public void A_figure_of_a_sentence_is_not_torn(string text, string printed) =>
        Assert.Equal(
            printed.Replace("[", "<span data-figure>", StringComparison.Ordinal)
                .Replace("]", "</span>", StringComparison.Ordinal),
            TemplateDesk.Render("{{ page.sentence }}", text));

    [Fact]
    public void Markup_is_printed_as_it_is() =>
        Assert.Equal("<b>ready</b>", TemplateDesk.Render("{{ page.markup }}"));

    [Theory]
    [InlineData("{{ page.markup | string.upcase }}")]
    [InlineData("{{ page.markup | string.append '' }}")]
    [InlineData("{{ [page.markup] | array.join '' }}")]
    [InlineData("{{ capture kept }}{{ page.markup }}{{ end }}{{ kept }}")]
    [InlineData("{{ include 'parts/p.html' | string.upcase }}")]
    [InlineData("{{ include_join ['parts/p.html'] '' }}")]
    public void Markup_that_went_through_a_function_is_text_again(string template) =>
        Assert.DoesNotContain('<', TemplateDesk.Render(template, "", ("parts/p.html", "{{ page.markup }}")));

    [Fact]
    public void What_a_part_printed_is_escaped_once_however_deep_it_stands()
    {
        var text = TemplateDesk.Render("{{ include 'parts/a.html' page.text }}", Hostile,
            ("parts/a.html", "<i>{{ include 'parts/b.html' $1 }}</i>"), ("parts/b.html", "<u>{{ $1 }}</u>"));
        Assert.Equal($"<i><u>{Escaped}</u></i>", text);
    }

    [Fact]
    public void Lines_of_a_part_are_not_indented() =>
        Assert.Equal("    a\nb", TemplateDesk.Render("    {{ include 'parts/p.html' }}", "", ("parts/p.html", "a\nb")));

    [Fact]
    public void Text_that_looks_like_a_template_stays_text() =>
        Assert.Equal("{{ 1 + 1 }}", TemplateDesk.Render("{{ page.text }}", "{{ 1 + 1 }}"));
}
