using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Reading;
using CareSheets.Rendering;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Rendering;

/// <summary>
/// Every kind of page, rendered by the real theme twice: once with a harmless mark in each field
/// and once with markup in each. Both must have the same elements with the same attributes, and
/// where the one has a mark the other must have the hostile text, letter for letter.
/// </summary>
public sealed partial class HostileStringTests
{
    private const string Hostile =
        """javascript:alert(1)<script>alert(1)</script>"' onmouseover="alert(1) &amp; </title></svg>""" +
        """--> {{ 1+1 }} `x` \ """;

    private static readonly PageRenderer Renderer = MakeRenderer();

    public static TheoryData<string, bool, bool> Pages()
    {
        Assert.True(PageFiller.Kinds.Count >= 13, $"Only {PageFiller.Kinds.Count} kinds of page were found.");
        var data = new TheoryData<string, bool, bool>();
        foreach (var kind in PageFiller.Kinds)
        {
            data.Add(kind.Name, true, true);
            data.Add(kind.Name, false, true);
            data.Add(kind.Name, true, false);
        }
        return data;
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Markup_in_every_field_stays_text(string kind, bool flag, bool isFull)
    {
        var harmless = Render(kind, (_, i) => Mark(i), flag, isFull);
        var hostile = Render(kind, (_, i) => $"{Hostile}{i}", flag, isFull);

        Assert.Equal(harmless.All.Select(Shape), hostile.All.Select(Shape));
        Assert.Equal(Texts(harmless).Select(Spoil), Texts(hostile));
        Assert.Contains(Texts(hostile), t => t.Contains(Hostile, StringComparison.Ordinal));
    }

    /// <summary>Addresses come from Routes, so here they are harmless and all other fields hostile.</summary>
    [Theory]
    [MemberData(nameof(Pages))]
    public void No_text_becomes_an_address_a_script_or_a_handler(string kind, bool flag, bool isFull)
    {
        var page = Render(kind, (name, i) => IsAddress(name) ? Mark(i) : $"{Hostile}{i}", flag, isFull);

        Assert.All(page.Scripts, s => Assert.Matches(
            "^mark[0-9]+kram(filter|find|species-names|lookup|typed|tank-form|together|fits-my-tank|tankmates-names" +
            "|water(-data|-sums|-bag|-form)?)\\.js$", s.Source));
        Assert.All(page.Scripts, s => Assert.Equal("", s.Text));
        Assert.DoesNotContain(page.All.SelectMany(e => e.Attributes), a =>
            a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase) || a.Name is "style" or "srcdoc");
        Assert.DoesNotContain(page.All.SelectMany(e => e.Attributes), a =>
            a.Name is "href" or "src" or "action" && a.Value.Contains("javascript", StringComparison.Ordinal));
        Assert.Empty(page.QuerySelectorAll("iframe, object, embed, base, form:not(.ask, .filter), style, img"));
    }

    private static bool IsAddress(string name) =>
        name is "Address" or "Root" or "Id" || name.EndsWith("Href", StringComparison.Ordinal);

    private static string Mark(int number) => $"mark{number}kram";

    private static string Spoil(string text) => MarkPattern().Replace(text, m => Hostile + m.Groups[1].Value);

    private static string Shape(IElement element) =>
        $"{element.LocalName} {string.Join(' ', element.Attributes.Select(a => a.Name))}";

    /// <summary>All texts and all values of attributes in their order.</summary>
    private static IEnumerable<string> Texts(IHtmlDocument page) =>
        page.All.SelectMany(e => e.Attributes.Select(a => a.Value)
            .Concat(e.ChildNodes.OfType<IText>().Select(t => t.Data)));

    private static IHtmlDocument Render(string kind, Func<string, int, string> text, bool flag, bool isFull)
    {
        var page = new PageFiller(text, flag, isFull).Make(PageFiller.Kinds.Single(k => k.Name == kind));
        var bag = new DiagnosticBag();
        var rendered = Renderer.Render(page, bag);
        Assert.True(rendered is not null, ToySite.Told(bag));
        return new HtmlParser().ParseDocument(rendered);
    }

    private static PageRenderer MakeRenderer()
    {
        var bag = new DiagnosticBag();
        var folder = Repository.At("themes", "riffle");
        var theme = CareSheets.Rendering.Theme.Read(folder, bag);
        var words = WordsReader.Read(folder, bag)!;
        Assert.False(bag.HasErrors, ToySite.Told(bag));
        return new PageRenderer(theme, new Words(words, folder));
    }

    [GeneratedRegex("mark([0-9]+)kram")]
    private static partial Regex MarkPattern();
}
