using System.Globalization;
using CareSheets.Collection;
using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Pages;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Bench.Tankmates;

/// <summary>
/// A collection as large as wished, made from the real entries: each is taken again and again with
/// other sizes and ranges, in the steps that writers use. The same every time.
/// </summary>
internal static class MadeUpCollection
{
    private const string Letters = "abcdefghijklmnopqrstuvwxyz";

    public static Site Make(string root, int count)
    {
        var bench = new Workbench(new SiteSettings
        {
            Content = Path.Combine(root, "content"),
            Theme = Path.Combine(root, "themes", "riffle"),
        });
        var real = bench.ReadCollection() ?? throw new InvalidOperationException("The content has errors.");
        var random = new Random(20261125);
        var entries = Enumerable.Range(0, count).Select(i => Vary(real.Entries[i % real.Entries.Count], i, random));
        var collection = new SpeciesCollection(
            real.Store, [.. entries], real.References.Values, real.Glossary, real.Figures,
            real.Known);
        return new Site(collection, bench.ReadWords()!, UnitSystem.Both);
    }

    private static Entry Vary(Entry entry, int number, Random random)
    {
        var epithet = "nova" + Letters[number % 26] + Letters[number / 26 % 26] + Letters[number / 676 % 26];
        var name = ScientificName.Parse($"{entry.Genus} {epithet}")!;
        var growth = Math.Round(random.NextDouble() + 0.6, 1);
        return entry with
        {
            Name = name.Slug,
            ScientificName = entry.ScientificName.With(name),
            VernacularNames = [entry.VernacularNames[0].With(
                $"{entry.VernacularName} {number.ToString(CultureInfo.InvariantCulture)}")],
            FormerNames = [],
            Adult = entry.Adult with { Length = Scaled(entry.Adult.Length, growth) },
            Ranges = [.. entry.Ranges.Select(r => Shifted(r, random))],
        };
    }

    private static Sourced<StatedRange> Scaled(Sourced<StatedRange> length, double by)
    {
        double? Half(double? cm) => cm is { } known ? Math.Max(1, Math.Round(known * by * 2) / 2) : null;
        return length.With(length.Value with { Low = Half(length.Value.Low), High = Half(length.Value.High) });
    }

    private static CareRange Shifted(CareRange range, Random random)
    {
        var step = range.Declaration.Field switch
        {
            "temperature" => 0.5,
            "ph" => 0.1,
            "hardness" => 17.848,
            _ => 0,
        };
        var shift = random.Next(-3, 4) * step;
        var least = range.Declaration.Dimension.Minimum;
        double? By(double? end) => end is { } known ? Math.Max(least, known + shift) : null;
        return range with
        {
            Kinds = [.. range.Kinds.Select(k => k with
            {
                Range = k.Range.With(k.Range.Value with { Low = By(k.Range.Value.Low), High = By(k.Range.Value.High) }),
            })],
        };
    }
}
