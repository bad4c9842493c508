using CareSheets.Collection;
using CareSheets.Quantities;

namespace CareSheets.Pages;

/// <summary>What every page maker needs: the collection, the words, and the units to show.</summary>
public sealed record Site(SpeciesCollection Collection, Words Words, UnitSystem Units)
{
    public FrameMaker Frames => new(this);

    public QuantityShow Quantities => new(Words, Units);
}
