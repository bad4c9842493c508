using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Quantities;

namespace CareSheets.Arrivals;

/// <summary>One line of a packing list with its fish, from the bag to the last of them sold.</summary>
public sealed record Batch
{
    /// <summary>Where the batch begins in its file.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>Number of the line in the supplier's list.</summary>
    public int? Line { get; init; }

    /// <summary>The line as the supplier wrote it, word for word.</summary>
    public required Sourced<string> Said { get; init; }

    /// <summary>Name of the entry; nothing while nobody knows what the fish are.</summary>
    public Sourced<string>? Entry { get; init; }

    public NameTaken? Taken { get; init; }

    /// <summary>Entries that the line may mean, the likeliest first, where none was taken.</summary>
    public IReadOnlyList<Sourced<string>> Perhaps { get; init; } = [];

    /// <summary>What the line leaves open, such as "M: male or medium".</summary>
    public IReadOnlyList<string> Unclear { get; init; } = [];

    /// <summary>How many the list promises.</summary>
    public Sourced<int>? Count { get; init; }

    /// <summary>How many were alive when the bag was opened; nothing before that.</summary>
    public Sourced<int>? Alive { get; init; }

    public StatedRange? Size { get; init; }

    public string? Sex { get; init; }

    public string? Strain { get; init; }

    public string? Place { get; init; }

    public Provenance Provenance { get; init; }

    /// <summary>Of one fish, in the shop's currency.</summary>
    public decimal? Price { get; init; }

    public string? Tank { get; init; }

    /// <summary>The system whose water the tank shares; nothing for a tank with a filter of its own.</summary>
    public Sourced<string>? System { get; init; }

    /// <summary>Days of watching, where the shop's usual number does not hold.</summary>
    public int? Days { get; init; }

    /// <summary>Water that the batch came in, all its bags together.</summary>
    public StatedRange? Water { get; init; }

    /// <summary>By date.</summary>
    public IReadOnlyList<Loss> Losses { get; init; } = [];

    /// <summary>What was found of the losses and done about them.</summary>
    public string? Cause { get; init; }

    /// <summary>Day from which none is in the shop any more.</summary>
    public Sourced<DateOnly>? Gone { get; init; }

    public string? Note { get; init; }

    /// <summary>
    /// Whether an open question of the list is about this very word. What is open is no fact, and customers are
    /// not told it.
    /// </summary>
    public bool IsOpen(string word) => Unclear.Any(question => Regex.IsMatch(
        question, $@"(?<!\w){Regex.Escape(word.Trim())}(?!\w)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant));

    /// <summary>Whether its bags have been opened, for only then is the number alive known.</summary>
    public bool IsUnpacked => Alive is not null;

    /// <summary>Alive today as far as the record goes; sales are not recorded here.</summary>
    public int? Left => Gone is not null ? 0 : Alive?.Value - Losses.Sum(l => l.Count.Value);
}
