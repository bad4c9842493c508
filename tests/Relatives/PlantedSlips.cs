using System.Globalization;
using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Relatives;
using CareSheets.Species;

namespace CareSheets.Tests.Relatives;

/// <summary>
/// Puts slips of one kind into 5 % of the values of the real collection, by a seed, and counts who is noticed.
/// </summary>
internal sealed class PlantedSlips(SpeciesCollection real, string kind, string field)
{
    /// <summary>10 mg CaO as CaCO3: 10 * 100.0869 / 56.0774.</summary>
    private const double Ppm = 17.848;

    private const double Share = 0.05;

    public int Planted { get; private set; }

    /// <summary>Found by the engine, or by the plausible limits of the schema.</summary>
    public int Found { get; private set; }

    public int FoundByLimits { get; private set; }

    public int Named { get; private set; }

    public int Clean { get; private set; }

    public int FalseAlarms { get; private set; }

    /// <summary>Values told as standing out, planted or not, without being flagged.</summary>
    public int SecondLooks { get; private set; }

    public void Run(int seed)
    {
        var random = new Random(seed);
        var figures = ComparedFigure.All(real.Figures);
        var figure = figures.Single(f => f.Field == field);
        var entries = real.Entries.ToList();
        var candidates = entries.Index().Where(e => figure.Own(e.Item) is { Value: { Low: not null, High: not null } })
            .Select(e => e.Index).ToArray();
        random.Shuffle(candidates);
        var chosen = candidates.Take(Math.Max(1, (int)Math.Round(candidates.Length * Share))).ToList();
        var limits = figure.Declaration.Plausible;
        StatedRange Partner(int index) =>
            figure.Own(real.Entries[chosen[(chosen.IndexOf(index) + 1) % chosen.Count]])!.Value;
        var planted = new HashSet<string>();
        foreach (var index in chosen)
        {
            var stated = figure.Own(entries[index])!.Value;
            var (low, high) = Slip(stated.Low!.Value, stated.High!.Value, Spread(figure, entries), Partner(index));
            Planted++;
            if (low < limits.Low || high > limits.High)
            {
                (Found, FoundByLimits) = (Found + 1, FoundByLimits + 1);
                continue;
            }
            entries[index] = Changed(entries[index], figure, low, high);
            planted.Add(entries[index].Name);
        }
        Count(entries, figure, planted, figures);
    }

    public double ShareFound => (double)Found / Planted;

    public double FalseAlarmsPerHundred => 100.0 * FalseAlarms / Clean;

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{$"{kind} ({field})",-42} planted {Planted,3}, found {100 * ShareFound,5:0.0} % " +
        $"(by limits {FoundByLimits}, named {Named}), " +
        $"false alarms {FalseAlarmsPerHundred:0.00} and second looks {100.0 * SecondLooks / Clean:0.00} per 100");

    private void Count(
        List<Entry> entries, ComparedFigure figure, HashSet<string> planted, IReadOnlyList<ComparedFigure> figures)
    {
        var collection = new SpeciesCollection(
            real.Store, entries, real.References.Values, real.Glossary, real.Figures, real.Known);
        var outliers = RelativesEngine.Ask(collection).Outliers.Where(o => o.Accepted is null).ToList();
        SecondLooks += outliers.Count(o => !o.IsSure);
        outliers.RemoveAll(o => !o.IsSure);
        bool IsPlanted(Outlier o) => planted.Contains(o.Entry.Name) && o.Figure.Field == figure.Field;
        Found += outliers.Count(IsPlanted);
        Named += outliers.Count(o => IsPlanted(o) && o.Slip is not null);
        FalseAlarms += outliers.Count(o => !IsPlanted(o));
        Clean += entries.Sum(e => figures.Count(f => f.Own(e) is not null)) - planted.Count;
    }

    private (double Low, double High) Slip(double low, double high, double sd, StatedRange partner) => kind switch
    {
        "Fahrenheit typed as Celsius" => (low * 1.8 + 32, high * 1.8 + 32),
        "Celsius typed as Fahrenheit" => ((low - 32) / 1.8, (high - 32) / 1.8),
        "ppm typed as degrees" => (low * Ppm, high * Ppm),
        "degrees typed as ppm" => (low / Ppm, high / Ppm),
        "decimal lost" => (low * 10, high * 10),
        "centimetres typed as inches" => (low * 2.54, high * 2.54),
        "inches typed as centimetres" => (low / 2.54, high / 2.54),
        "standard for total length" => (low / 1.2, high / 1.2),
        "middle moved by 3 sd" => (low + 3 * sd, high + 3 * sd),
        "two rows exchanged" => (partner.Low!.Value, partner.High!.Value),
        _ => throw new InvalidOperationException($"There is no slip “{kind}”."),
    };

    /// <summary>Standard deviation of the middles over the collection: the yardstick of a shifted middle.</summary>
    private static double Spread(ComparedFigure figure, IEnumerable<Entry> entries)
    {
        var middles = entries.Select(figure.Own).Where(o => o is { Value: { Low: not null, High: not null } })
            .Select(o => (o!.Value.Low!.Value + o.Value.High!.Value) / 2).ToList();
        var mean = middles.Average();
        return Math.Sqrt(middles.Sum(m => (m - mean) * (m - mean)) / (middles.Count - 1));
    }

    private static Entry Changed(Entry entry, ComparedFigure figure, double low, double high)
    {
        var stated = figure.Own(entry)!;
        var unit = stated.Value.Unit;
        var text = string.Create(CultureInfo.InvariantCulture, $"{low}-{high} {unit.Symbol}");
        var changed = stated.With(stated.Value with { Low = low, High = high, Text = text });
        if (figure.IsSize)
            return entry with { Adult = entry.Adult with { Length = changed } };
        var ranges = entry.Ranges.Select(r => r.Declaration.Field != figure.Field
            ? r
            : r with { Kinds = [.. r.Kinds.Select(k => k.Kind == RangeKind.Keep ? k with { Range = changed } : k)] });
        return entry with { Ranges = [.. ranges] };
    }
}
