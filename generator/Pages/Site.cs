using System.Collections.Concurrent;
using CareSheets.Collection;
using CareSheets.Paper;
using CareSheets.Quantities;
using CareSheets.Regulations;
using CareSheets.Relatives;

namespace CareSheets.Pages;

/// <summary>What every page maker needs: the collection, the words, and the units to show.</summary>
public sealed record Site(SpeciesCollection Collection, Words Words, UnitSystem Units)
{
    /// <summary>Species as rows of lists, made once for each depth of page.</summary>
    internal ConcurrentDictionary<(string Entry, string Root), SpeciesRow> Rows { get; } = new();

    /// <summary>Care ranges of each entry as rows, for page, sheet, card and lists; by the range's field.</summary>
    internal ConcurrentDictionary<(string Entry, string Field, UnitSystem Units), RangeRow> RangeRows { get; } = new();

    /// <summary>The code that leads to a species' page, for sheet and card; by address.</summary>
    internal ConcurrentDictionary<string, QrCode?> PageCodes { get; } = new();

    /// <summary>Lists of law and duties of advice.</summary>
    public LawBook Law { get; init; } = LawBook.Empty;

    /// <summary>What relatives say, asked once for all pages.</summary>
    public RelativesEngine Relatives
    {
        get => field ??= RelativesEngine.Ask(Collection);
        init;
    }

    public FrameMaker Frames => new(this);

    public QuantityShow Quantities => new(Words, Units, Collection.Store.Units);
}
