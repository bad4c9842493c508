using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>
/// Where each page stands in the site. Addresses are relative files with forward slashes, so that
/// the site works from a disk and under any path of a server.
/// </summary>
public static class Routes
{
    public const string Home = "index.html";
    public const string AllSpecies = "species/index.html";
    public const string SpeciesNames = "species-names.js";
    public const string Families = "families/index.html";
    public const string Genera = "genera/index.html";
    public const string Orders = "orders/index.html";
    public const string Origins = "origins/index.html";
    public const string Glossary = "words.html";
    public const string About = "about.html";
    public const string HowWell = "how-well.html";
    public const string Flagged = "papers/relatives.html";
    public const string Evidence = "papers/evidence.html";
    public const string WaterSums = "water.html";
    public const string WaterData = "water-data.js";
    public const string Where = "papers/where.html";
    public const string Together = "together.html";
    public const string FitsMyTank = "fits-my-tank.html";
    public const string MateNames = "tankmates-names.js";
    public const string MateVerdicts = "tankmates-verdicts.js";
    public const string MateNeeds = "tankmates-needs.js";
    public const string NewArrivals = "new-arrivals.html";
    public const string ArrivalFeed = "new-arrivals.atom";
    public const string Papers = "papers/index.html";
    public const string CardStyle = "papers/card.css";

    public static string Species(Entry entry) => Species(entry.Name);

    public static string Species(string name) => $"species/{name}.html";

    public static string HomeSheet(Entry entry) => $"papers/sheet-{entry.Name}.html";

    public static string TankCard(Entry entry) => $"papers/card-{entry.Name}.html";

    public static string Docket(string arrival) => $"papers/docket-{arrival}.html";

    public static string TalkingNotes(string arrival) => $"papers/notes-{arrival}.html";

    public static string Taxon(TaxonRank rank, string name) => rank switch
    {
        TaxonRank.Order => $"orders/{Slug.From(name)}.html",
        TaxonRank.Family => $"families/{Slug.From(name)}.html",
        TaxonRank.Genus => $"genera/{Slug.From(name)}.html",
    };

    public static string Country(string code) => $"origins/{code.ToLowerInvariant()}.html";

    /// <summary>No country's address begins so, for all of those have two letters.</summary>
    public static string Water(string name) => $"origins/water-{Slug.From(name)}.html";

    /// <summary>The way from a page back to the top of the site: empty, or <c>../</c>.</summary>
    public static string Root(string address) =>
        string.Concat(Enumerable.Repeat("../", address.Count(c => c == '/')));

    /// <summary>A link from one page to another.</summary>
    public static string Between(string from, string to) => Root(from) + to;
}
