namespace CareSheets.PackingLists;

/// <summary>What stands in a column of a list.</summary>
internal enum ColumnRole
{
    /// <summary>Scientific names.</summary>
    Name,

    Vernacular,

    /// <summary>Names with everything else in one text.</summary>
    Text,

    Code,
    Size,
    Count,
    Bags,
    PerBag,

    /// <summary>Fish of a line, all its bags together.</summary>
    Total,

    Price,

    /// <summary>Sums of a line, which say nothing new.</summary>
    Sum,

    Sex,
    Provenance,
    Place,
    Remarks,
    Box,
}
