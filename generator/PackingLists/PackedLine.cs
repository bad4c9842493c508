using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>A line of a packing list in its parts. What is not sure stands in <see cref="Unclear"/>.</summary>
public sealed record PackedLine
{
    public required int Line { get; init; }

    /// <summary>The line word for word.</summary>
    public required string Said { get; init; }

    /// <summary>The part that names the fish, as written.</summary>
    public required string NameText { get; init; }

    /// <summary>The text that the name was read of, whole.</summary>
    public string Main { get; init; } = "";

    public required NameReading Reading { get; init; }

    /// <summary>A vernacular name in a column of its own, or empty.</summary>
    public string Beside { get; init; } = "";

    public int? Count { get; init; }

    /// <summary>In the form of an arrival, without its basis; empty where none is told in figures.</summary>
    public string Size { get; init; } = "";

    /// <summary>S, M, L and the like, which each supplier means in his own way.</summary>
    public string SizeMark { get; init; } = "";

    /// <summary>A word of the arrival's schema, or empty.</summary>
    public string Sex { get; init; } = "";

    /// <summary>A word of the arrival's schema, or empty.</summary>
    public string Provenance { get; init; } = "";

    public string Strain { get; init; } = "";

    public string Place { get; init; } = "";

    /// <summary>The supplier's price for one, as written.</summary>
    public string Price { get; init; } = "";

    /// <summary>Remarks of the list that are none of these.</summary>
    public string Remark { get; init; } = "";

    public IReadOnlyList<string> Unclear { get; init; } = [];

    /// <summary>Whether it is fish even where nothing tells how many.</summary>
    public bool IsLikeFish { get; init; }

    /// <summary>The line with the question how many, where it doesn't say so.</summary>
    internal PackedLine WithOpenCount() =>
        Count is not null || Unclear.Any(u => u.StartsWith(HowMany, StringComparison.Ordinal) || u.Contains(" fish"))
            ? this
            : this with { Unclear = [.. Unclear, HowMany] };

    private const string HowMany = "how many";

    internal WrittenName Written(IReadOnlySet<string> genera) => new(Reading, NameText, Beside, genera);
}
