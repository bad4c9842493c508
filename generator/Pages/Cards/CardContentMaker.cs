using System.Globalization;
using CareSheets.Names;
using CareSheets.Pages.Law;
using CareSheets.Pages.Outlines;
using CareSheets.Paper;
using CareSheets.Paper.Layout;
using CareSheets.Proofing;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Pages.Cards;

/// <summary>
/// An entry as the content of its tank card, the most important first: what a fish dies of without,
/// then what a buyer must know, then what is good to know.
/// </summary>
internal sealed class CardContentMaker(Site site)
{
    private readonly EntryFacts _facts = new(site);
    private readonly RangeRowMaker _rows = new(site);
    private readonly LawMaker _law = new(site);
    private readonly CardCompany _company = new(site);

    private Words Words => site.Words;

    public CardContent Make(Entry entry, CardOffer? offer = null) => new(
        new HeadPart(Capital(entry.VernacularName), entry.ScientificName.Value.ToString()),
        [.. Parts(entry, offer).Where(p => p.Texts.Any(t => t.Length > 0))],
        new CardFoot(
            site.Collection.Store.Name, Words.Say("card.reviewed", ("day", DateText.Of(entry.Reviewed, Words))),
            count => Words.Count("card.more_cautions", count)));

    private IEnumerable<ICardPart> Parts(Entry entry, CardOffer? offer) =>
    [
        .. Water(entry),
        new OfferPart(Words["card.price"], offer?.Price ?? "", offer?.Kind ?? "", offer?.Release ?? ""),
        .. About(entry, Cautions(entry), offer),
    ];

    private IEnumerable<ICardPart> Water(Entry entry)
    {
        var isGuess = entry.Evidence.Kind == EvidenceKind.FromRelatives;
        foreach (var water in _rows.MakeBrief(entry))
            yield return new WaterPart(water.Label, water.First, water.Second, isGuess ? "" : water.Brief);
        if (isGuess)
            yield return new TextPart(CardPlace.Head, Words["card.guess"], Words["card.guessed"]);
    }

    private IEnumerable<ICardPart> About(Entry entry, IReadOnlyList<CautionPart> cautions, CardOffer? offer)
    {
        foreach (var caution in cautions.Take(1))
            yield return caution;
        if (site.PageCodes.GetOrAdd(site.Collection.Store.Address + Routes.Species(entry), QrCode.Of) is { } code)
            yield return new CodePart(
                Words["card.code"], code, Words.Say("card.code_leads", ("address", code.Address)));
        yield return Length(entry);
        foreach (var fact in _company.Make(entry))
            yield return fact;
        yield return Tank(entry);
        yield return Food(entry);
        foreach (var fact in _company.MakeLess(entry))
            yield return fact;
        if (entry.Adult.Length.Value is { High: not null } or { Low: not null })
            yield return Picture(entry);
        foreach (var caution in cautions.Skip(1).Take(1))
            yield return caution;
        yield return From(entry, offer);
        foreach (var caution in cautions.Skip(2))
            yield return caution;
    }

    /// <summary>
    /// On which basis is said in words, so that TL and SL can go; and how high it is, where the entry says it.
    /// </summary>
    private FactPart Length(Entry entry)
    {
        var (length, basis) = (entry.Adult.Length.Value, Words[$"mate_basis.{entry.Adult.Length.Value.Basis}"]);
        return new FactPart(
            CardPlace.Size, Words["card.grown"], site.Quantities.Show(length.WithoutBasis(), Rounding.Upward).Both,
            entry.Adult.Height is { } height
                ? Words.Say("card.high", ("basis", basis),
                    ("height", site.Quantities.Show(height.Value, Rounding.Upward).Both))
                : basis,
            IsFigure: true);
    }

    private FactPart Tank(Entry entry)
    {
        var tank = _facts.Tank(entry);
        return new FactPart(CardPlace.Facts, Words["card.tank"], tank.Value, tank.Note) { HasSpareNote = true };
    }

    private FactPart Food(Entry entry) => new(
        CardPlace.Facts, Words["card.food"],
        entry.Foods.Count > 0 ? _facts.Plain(entry.Foods) : _facts.List("diet", entry.Diet), "");

    private SizePart Picture(Entry entry)
    {
        var ruler = site.Collection.Store.Units == UnitSystem.US ? Ruler.Inches : Ruler.Centimetres;
        return new SizePart(
            Words["card.picture"], Length(entry), FishOutline.Of(entry), ruler,
            Words["card.actual_size"], Words["card.smaller"]);
    }

    private TextPart From(Entry entry, CardOffer? offer)
    {
        var countries = string.Join(Words["sentence.list_separator"],
            entry.Origin.CountryCodes.Select(c => CountryName.Of(c.Value, Words)));
        var from = offer is { From.Length: > 0 } ? Capital(offer.From) : Words.Say("card.from", ("place", countries));
        return new TextPart(CardPlace.Head, Words["card.origin"], from);
    }

    /// <summary>A list of law that names the fish, then hazards, then what the entry says, the gravest first.</summary>
    private List<CautionPart> Cautions(Entry entry)
    {
        var cautions = CautionsOf.Entry(entry, site.Collection.Practice.Hazards).Select(c => c.Brief);
        var all = _law.Card(entry) is { } law ? cautions.Prepend(law) : cautions;
        return [.. all.Select((text, i) => new CautionPart(
            Words.Say("card.caution", ("number", (i + 1).ToString(CultureInfo.InvariantCulture))),
            [.. LatinRuns.Of(text).Select(r => new TypeRun(r.Text, r.IsLatin ? Face.Latin : Face.Plain))], i == 0))];
    }

    private static string Capital(string name) =>
        name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
}
