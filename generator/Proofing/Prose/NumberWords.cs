using System.Collections.Frozen;

namespace CareSheets.Proofing.Prose;

/// <summary>Numbers as English words.</summary>
internal static class NumberWords
{
    /// <summary>Below twenty; they stand alone or after a ten.</summary>
    public static readonly FrozenDictionary<string, double> Small = new Dictionary<string, double>
    {
        ["zero"] = 0,
        ["one"] = 1,
        ["two"] = 2,
        ["three"] = 3,
        ["four"] = 4,
        ["five"] = 5,
        ["six"] = 6,
        ["seven"] = 7,
        ["eight"] = 8,
        ["nine"] = 9,
        ["ten"] = 10,
        ["eleven"] = 11,
        ["twelve"] = 12,
        ["thirteen"] = 13,
        ["fourteen"] = 14,
        ["fifteen"] = 15,
        ["sixteen"] = 16,
        ["seventeen"] = 17,
        ["eighteen"] = 18,
        ["nineteen"] = 19,
    }.ToFrozenDictionary();

    public static readonly FrozenDictionary<string, double> Tens = new Dictionary<string, double>
    {
        ["twenty"] = 20,
        ["thirty"] = 30,
        ["forty"] = 40,
        ["fifty"] = 50,
        ["sixty"] = 60,
        ["seventy"] = 70,
        ["eighty"] = 80,
        ["ninety"] = 90,
    }.ToFrozenDictionary();

    /// <summary>As in mid-seventies and mid 70s.</summary>
    public static readonly FrozenDictionary<string, double> Decades = new Dictionary<string, double>
    {
        ["twenties"] = 20,
        ["thirties"] = 30,
        ["fifties"] = 50,
        ["sixties"] = 60,
        ["seventies"] = 70,
        ["eighties"] = 80,
        ["nineties"] = 90,
    }.ToFrozenDictionary();

    /// <summary>Which part of ten: 70-73 are the low seventies (common practice, no source).</summary>
    public static readonly FrozenDictionary<string, (double From, double To)> PartsOfTen =
        new Dictionary<string, (double, double)>
        {
            ["low"] = (0, 3),
            ["lower"] = (0, 3),
            ["mid"] = (4, 6),
            ["middle"] = (4, 6),
            ["high"] = (7, 9),
            ["upper"] = (7, 9),
        }.ToFrozenDictionary();
}
