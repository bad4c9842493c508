using System.Collections.Concurrent;
using CareSheets.Collection;
using CareSheets.Quantities;
using CareSheets.Regulations;
using CareSheets.Relatives;

namespace CareSheets.Pages;

/// <summary>What every page maker needs: the collection, the words, and the units to show.</summary>
public sealed record Site(SpeciesCollection Collection, Words Words, UnitSystem Units)
{
    /// <summary>Species as rows of lists, made once for each depth of page.</summary>
    internal ConcurrentDictionary<(string Entry, string Root), SpeciesRow> Rows { get; } = new();

    /// <summary>Lists of law and duties of advice.</summary>
    public LawBook Law { get; init; } = LawBook.Empty;

    /// <summary>What relatives say, asked once for all pages.</summary>
    public RelativesEngine Relatives
    {
        get => field ??= RelativesEngine.Ask(Collection);
        init;
    }

    public FrameMaker Frames => new(this);

    public QuantityShow Quantities => new(Words, Units);
}
