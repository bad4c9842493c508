using System.Globalization;
using System.Text.RegularExpressions;
using CareSheets.Proofing.Prose;
using CareSheets.Quantities;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing.Prose;

/// <summary>A quantity as a person labelled it in a sentence: its words, what it is about, what it comes to.</summary>
/// <param name="Ends">The numbers in it, in the canonical unit.</param>
internal sealed record LabelledQuantity(
    int Start, int Length, ProseKind Kind, IReadOnlyList<double> Ends, bool Disagrees);

/// <summary>A sentence with the quantities that are about the species itself; the files explain the signs.</summary>
internal sealed partial record LabelledSentence(string Text, IReadOnlyList<LabelledQuantity> Quantities)
{
    private static readonly Dictionary<string, (ProseKind Kind, Dimension? Dimension)> Kinds = new()
    {
        ["temp"] = (ProseKind.Temperature, DimensionCatalogue.Temperature),
        ["ph"] = (ProseKind.Acidity, DimensionCatalogue.Acidity),
        ["gh"] = (ProseKind.GeneralHardness, DimensionCatalogue.GeneralHardness),
        ["kh"] = (ProseKind.CarbonateHardness, DimensionCatalogue.CarbonateHardness),
        ["salt"] = (ProseKind.Salinity, DimensionCatalogue.Salinity),
        ["length"] = (ProseKind.Length, DimensionCatalogue.Length),
        ["tanklength"] = (ProseKind.TankLength, DimensionCatalogue.Length),
        ["volume"] = (ProseKind.TankVolume, DimensionCatalogue.Volume),
        ["life"] = (ProseKind.LifeSpan, DimensionCatalogue.Duration),
        ["group"] = (ProseKind.Group, null),
    };

    public static IReadOnlyList<LabelledSentence> Read(string file) =>
    [
        .. File.ReadLines(Repository.At("tests", "Proofing", "Prose", file))
            .Where(line => line.Length > 0 && line[0] != '#').Select(Parse),
    ];

    private static LabelledSentence Parse(string line)
    {
        var quantities = new List<LabelledQuantity>();
        var text = "";
        var from = 0;
        foreach (Match label in Label().Matches(line))
        {
            text += line[from..label.Index];
            quantities.Add(Quantity(label, text.Length));
            text += label.Groups["words"].Value;
            from = label.Index + label.Length;
        }
        return new LabelledSentence(text + line[from..], quantities);
    }

    private static LabelledQuantity Quantity(Match label, int start)
    {
        var (kind, dimension) = Kinds[label.Groups["kind"].Value];
        var value = label.Groups["value"].Value.Trim();
        return new LabelledQuantity(
            start, label.Groups["words"].Length, kind, dimension is null ? Counts(value) : Ends(value, dimension),
            label.Groups["no"].Success);
    }

    private static List<double> Ends(string value, Dimension dimension)
    {
        var range = QuantityText.Parse(value, dimension);
        Assert.True(range.Ok, $"The label {value} is not a {dimension}.");
        return [.. new[] { range.Value.Low, range.Value.High }.OfType<double>().Distinct()];
    }

    private static List<double> Counts(string value) =>
        [.. Number().Matches(value).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"\{(?<words>[^|{}]+)\|(?<kind>\w+) (?<value>[^!{}]+)(?<no>!)?\}")]
    private static partial Regex Label();

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Number();
}
