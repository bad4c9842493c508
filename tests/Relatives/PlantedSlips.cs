using System.Globalization;
using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Relatives;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Relatives;

/// <summary>
/// Puts slips of one kind into 5 % of the values of the real collection, by a seed, and counts who is noticed.
/// </summary>
internal sealed class PlantedSlips(
    string kind, string field, Func<double, double, double, (double Low, double High)> slip)
{
    private const double Share = 0.05;

    public string Kind => kind;

    public int Planted { get; private set; }

    /// <summary>Found by the engine, or by the plausible limits of the schema.</summary>
    public int Found { get; private set; }

    public int FoundByLimits { get; private set; }

    public int Named { get; private set; }

    public int Clean { get; private set; }

    public int FalseAlarms { get; private set; }

    public void Run(int seed)
    {
        var random = new Random(seed);
        var figures = ComparedFigure.All(RealContent.Collection.Figures);
        var figure = figures.Single(f => f.Field == field);
        var entries = RealContent.Collection.Entries.ToList();
        var candidates = entries.Index().Where(e => figure.Own(e.Item) is { Value: { Low: not null, High: not null } })
            .Select(e => e.Index).ToArray();
        random.Shuffle(candidates);
        var chosen = candidates.Take(Math.Max(1, (int)Math.Round(candidates.Length * Share))).ToList();
        var limits = figure.Declaration.Plausible;
        var planted = new HashSet<string>();
        foreach (var index in chosen)
        {
            var stated = figure.Own(entries[index])!.Value;
            var (low, high) = slip(stated.Low!.Value, stated.High!.Value, Spread(figure, entries));
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
        $"{kind,-30} planted {Planted,3}, found {100 * ShareFound,5:0.0} % " +
        $"(by limits {FoundByLimits}, named {Named}), " +
        $"false alarms {FalseAlarmsPerHundred:0.00} per 100");

    private void Count(
        List<Entry> entries, ComparedFigure figure, HashSet<string> planted, IReadOnlyList<ComparedFigure> figures)
    {
        var real = RealContent.Collection;
        var collection = new SpeciesCollection(
            real.Store, entries, real.References.Values, real.Glossary, real.Figures, real.Known);
        var outliers = RelativesEngine.Ask(collection).Outliers.Where(o => o.Accepted is null).ToList();
        bool IsPlanted(Outlier o) => planted.Contains(o.Entry.Name) && o.Figure.Field == figure.Field;
        Found += outliers.Count(IsPlanted);
        Named += outliers.Count(o => IsPlanted(o) && o.Slip is not null);
        FalseAlarms += outliers.Count(o => !IsPlanted(o));
        Clean += entries.Sum(e => figures.Count(f => f.Own(e) is not null)) - planted.Count;
    }

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
