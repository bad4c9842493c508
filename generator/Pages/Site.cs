using CareSheets.Collection;
using CareSheets.Quantities;
using CareSheets.Relatives;

namespace CareSheets.Pages;

/// <summary>What every page maker needs: the collection, the words, and the units to show.</summary>
public sealed record Site(SpeciesCollection Collection, Words Words, UnitSystem Units)
{
    /// <summary>What relatives say, asked once for all pages.</summary>
    public RelativesEngine Relatives
    {
        get => field ??= RelativesEngine.Ask(Collection);
        init;
    }

    public FrameMaker Frames => new(this);

    public QuantityShow Quantities => new(Words, Units);
}
