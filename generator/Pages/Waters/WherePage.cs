namespace CareSheets.Pages.Waters;

/// <summary>For staff: in which of the shop's waters each species can live, and why not in the others.</summary>
/// <param name="Homeless">Species that fit none of the systems, with the blends that would do.</param>
public sealed record WherePage(
    string Address, PageFrame Frame, string Heading, string Lead, string HomelessHeading, string HomelessCount,
    IReadOnlyList<HomelessSpecies> Homeless, string TableHeading, string TableLead,
    IReadOnlyList<WhereRow> Rows, IReadOnlyList<string> Notes) : IPage
{
    public string Template => "where";
}

/// <param name="Nearest">The water with the fewest things against it, and what those are.</param>
public sealed record HomelessSpecies(Link Species, string Latin, string Nearest, IReadOnlyList<string> Blends);

/// <param name="Id">The name of the entry, for links from dockets.</param>
public sealed record WhereRow(string Id, Link Species, string Latin, IReadOnlyList<WhereCell> Cells);

/// <param name="Verdict">0 fits, 1 as far as known, 2 does not fit: for its sign.</param>
public sealed record WhereCell(string Water, string Verdict, string Word, IReadOnlyList<string> Reasons);
