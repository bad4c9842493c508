using System.Collections.Frozen;
using CareSheets.Quantities;

namespace CareSheets.Proofing.Prose;

/// <summary>What a unit in running text measures, as far as the unit alone tells.</summary>
internal enum Measure
{
    Temperature,

    /// <summary>Degrees of nobody says what.</summary>
    Degrees,
    GeneralHardness,
    CarbonateHardness,

    /// <summary>mg/L or ppm, of nobody says what.</summary>
    Dissolved,
    Length,
    Volume,
    Duration,
    Salinity,
}

/// <summary>A unit read from tokens, and the token after it.</summary>
/// <param name="Low">The unit, or the smaller of the two that it may mean.</param>
/// <param name="High">The same, or the larger: an imperial gallon beside a US one.</param>
internal readonly record struct UnitPhrase(Measure Measure, Unit? Low, Unit? High, int Next)
{
    private static readonly FrozenDictionary<string, (Measure Measure, Unit Unit)> Words = All();

    public static UnitPhrase? Read(TokenRun run, int at)
    {
        if (run[at].Text is "-" or "‑" && run[at + 1].Kind == TokenKind.Word)
            at++;
        var text = run[at].Text;
        return text switch
        {
            "°" or "º" or "˚" => Degrees(run, at + 1),
            "degree" or "degrees" or "deg" => Degrees(run, at + 1),
            "℃" => Of(Measure.Temperature, DimensionCatalogue.Temperature, "°C", at + 1),
            "℉" => Of(Measure.Temperature, DimensionCatalogue.Temperature, "°F", at + 1),
            "gallon" or "gallons" or "gal" or "gals" => Gallons(at + 1),
            "us" or "imperial" or "uk" when run[at + 1].Text is "gallon" or "gallons" or "gal" =>
                Of(Measure.Volume, DimensionCatalogue.Volume, text == "us" ? "US gal" : "imp gal", at + 2),
            "in" when IsInch(run, at) => Of(Measure.Length, DimensionCatalogue.Length, "in", at + 1),
            "\"" or "″" or "”" when run[at].Touches(run[at - 1]) =>
                Of(Measure.Length, DimensionCatalogue.Length, "in", at + 1),
            "mg" or "milligram" or "milligrams" or "g" or "gram" or "grams" => PerLitre(run, at, text[0] == 'm'),
            "ppm" => new UnitPhrase(Measure.Dissolved, null, null, at + 1),
            _ when Words.TryGetValue(text, out var found) =>
                new UnitPhrase(found.Measure, found.Unit, found.Unit, at + 1),
            _ => null,
        };
    }

    private static UnitPhrase Degrees(TokenRun run, int at)
    {
        if (run[at].Text is "of" or "general" or "german" or "hardness" or "carbonate")
        {
            var ahead = run[at].Text == "of" ? at + 1 : at;
            var isCarbonate = run[ahead].Text == "carbonate";
            var hard = run[ahead].Text == "hardness" ? ahead : run[ahead + 1].Text == "hardness" ? ahead + 1 : -1;
            if (hard >= 0)
                return isCarbonate
                    ? Of(Measure.CarbonateHardness, DimensionCatalogue.CarbonateHardness, "°dKH", hard + 1)
                    : Of(Measure.GeneralHardness, DimensionCatalogue.GeneralHardness, "°dH", hard + 1);
        }
        return Words.TryGetValue(run[at].Text, out var found) &&
            found.Measure is Measure.Temperature or Measure.GeneralHardness or Measure.CarbonateHardness
            ? new UnitPhrase(found.Measure, found.Unit, found.Unit, at + 1)
            : new UnitPhrase(Measure.Degrees, null, null, at);
    }

    private static UnitPhrase Gallons(int next) => new(
        Measure.Volume, DimensionCatalogue.Volume.Find("US gal"), DimensionCatalogue.Volume.Find("imp gal"), next);

    /// <summary>"3 in long", "3in.", but not "3 in a tank".</summary>
    private static bool IsInch(TokenRun run, int at) =>
        run[at - 1].Kind == TokenKind.Number && (run[at].Touches(run[at - 1]) ||
            run[at + 1].Kind == TokenKind.Stop || run[at + 1].Text is "long" or "tl" or "sl" or "," or ")" or ".");

    private static UnitPhrase? PerLitre(TokenRun run, int at, bool milligrams)
    {
        if (run[at + 1].Text is not ("/" or "per") || run[at + 2].Text is not ("l" or "litre" or "liter"))
            return null;
        return milligrams
            ? new UnitPhrase(Measure.Dissolved, null, null, at + 3)
            : Of(Measure.Salinity, DimensionCatalogue.Salinity, "g/L", at + 3);
    }

    private static UnitPhrase Of(Measure measure, Dimension dimension, string unit, int next) =>
        new(measure, dimension.Find(unit), dimension.Find(unit), next);

    private static FrozenDictionary<string, (Measure, Unit)> All()
    {
        var all = new Dictionary<string, (Measure, Unit)>();
        void Add(Measure measure, Dimension dimension, string words)
        {
            foreach (var word in words.Split(' '))
                all[word] = (measure, dimension.Find(word)!);
        }
        Add(Measure.Temperature, DimensionCatalogue.Temperature, "c celsius f fahrenheit");
        all["centigrade"] = all["celsius"];
        Add(Measure.GeneralHardness, DimensionCatalogue.GeneralHardness, "dh dgh");
        Add(Measure.CarbonateHardness, DimensionCatalogue.CarbonateHardness, "dkh");
        Add(Measure.Length, DimensionCatalogue.Length,
            "cm mm m metre metres meter meters centimetre centimetres centimeter centimeters millimetre " +
            "millimetres millimeter millimeters inch inches ft foot feet");
        Add(Measure.Volume, DimensionCatalogue.Volume, "l litre litres liter liters");
        Add(Measure.Duration, DimensionCatalogue.Duration, "year years yr yrs month months week weeks day days");
        return all.ToFrozenDictionary();
    }
}
