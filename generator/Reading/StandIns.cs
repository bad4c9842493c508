using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Quantities;

namespace CareSheets.Reading;

/// <summary>
/// What stands in an entry for what its file lacks, so that the rest can be checked in the same run. A stand-in says
/// nothing and has no place: what is found of one is nobody's mistake, and is not told.
/// </summary>
internal sealed class StandIns
{
    public static readonly Sourced<string> Word = new("", SourceSpan.None);

    public static readonly Sourced<int> Count = new(0, SourceSpan.None);

    public static readonly Sourced<StatedRange> Length = Open(DimensionCatalogue.Length);

    public static readonly Sourced<StatedRange> Volume = Open(DimensionCatalogue.Volume);

    /// <summary>Whether any was needed.</summary>
    public bool AreUsed { get; private set; }

    public T Or<T>(T? stated, T standIn)
        where T : class
    {
        AreUsed |= stated is null;
        return stated ?? standIn;
    }

    /// <summary>The name that the file is called after; nothing where it is called after none.</summary>
    public static Sourced<ScientificName>? NameOf(string file)
    {
        var words = Path.GetFileNameWithoutExtension(file).Replace('-', ' ');
        return words.Length > 0 && ScientificName.Parse(char.ToUpperInvariant(words[0]) + words[1..]) is { } name
            ? new(name, SourceSpan.None) : null;
    }

    private static Sourced<StatedRange> Open(Dimension dimension) => new(
        new StatedRange
        {
            Dimension = dimension,
            Low = null,
            High = null,
            Unit = dimension.Units[0],
            Typed = "",
            Text = "",
        },
        SourceSpan.None);
}
