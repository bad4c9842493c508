using System.Text;
using CareSheets.Pages.Cards;
using CareSheets.Paper;
using CareSheets.Paper.Layout;
using CareSheets.Rendering;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Browser;

/// <summary>Cards as the program writes them for the printer, in a folder of their own.</summary>
internal sealed class CardPrint : IDisposable
{
    private static readonly CareSheets.Rendering.Theme Riffle =
        CareSheets.Rendering.Theme.Read(Repository.At("themes", "riffle"), new CareSheets.Diagnostics.DiagnosticBag());

    public string Folder { get; } = Directory.CreateTempSubdirectory("caresheets-cards-").FullName;

    /// <summary>The page of a leaf after the other, as a file's address.</summary>
    public string Write(Imposition imposition, IReadOnlyList<CardPlan> cards, string more = "")
    {
        var maker = new CardPageMaker(RealPages.Site);
        var entry = RealPages.Collection.Entries[0];
        var page = maker.Make("cards.html", "cards.css", imposition, [.. cards.Select(c => (entry, c))]);
        var bag = new CareSheets.Diagnostics.DiagnosticBag();
        var text = new PageRenderer(Riffle, RealPages.Site.Words).Render(page, bag);
        Assert.True(text is not null, ToySite.Told(bag));
        File.WriteAllText(Path.Combine(Folder, "cards.html"), text);
        File.WriteAllText(Path.Combine(Folder, "cards.css"), CardPageMaker.Style(imposition.Sheet) + more);
        File.WriteAllBytes(Path.Combine(Folder, "site.css"), CareSheets.Publishing.ThemeAssets
            .Read(Repository.At("themes", "riffle"), bag).Single(a => a.Address == "site.css").Bytes.ToArray());
        return new Uri(Path.Combine(Folder, "cards.html")).AbsoluteUri;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    /// <summary>Texts that no writer should write, and some will: the longest, the most, the strangest.</summary>
    public static CardContent Extreme(string name, int cautions, string shop = "Copperbeck Fishroom")
    {
        var words = new StringBuilder();
        for (var i = 0; i < 60; i++)
            words.Append("wide moving waters ");
        var countries = string.Join(", ", Enumerable.Repeat("Democratic Republic of the Far Uplands", 12));
        var code = QrCode.Of("https://copperbeck.example/species/" + new string('a', 80) + ".html")!;
        return new CardContent(
            new HeadPart(name, "Pseudoplatystomatichthys extraordinarissimus"),
            [
                new WaterPart("Temperature", "18.5–28.5 °C", "about 65–83 °F", "from 12 near relatives"),
                new WaterPart("Salinity", "2.5–12.5 g/L", "", ""),
                new WaterPart("General hardness", "relatives disagree", "", ""),
                .. Enumerable.Range(1, 3).Select(i => new CautionPart($"caution {i}", words.ToString()[..(100 * i)])),
                new CodePart("QR code", code, "QR code"),
                new FactPart(CardPlace.Size, "Grown", "105.5 cm (42 in)", "with its tail"),
                new FactPart(CardPlace.Facts, "Group", "at least 120", "one male with several females"),
                new FactPart(CardPlace.Facts, "Temper", "fierce, may injure or kill", ""),
                new TextPart(CardPlace.Head, "origin", "From " + countries),
                new FactPart(CardPlace.Facts, "Food", words.ToString()[..240], ""),
                .. Enumerable.Range(4, cautions).Select(i => new CautionPart($"caution {i}", words.ToString()[..150])),
            ],
            new CardFoot(shop, "30 September 2026", count => $"{count} more"));
    }
}
