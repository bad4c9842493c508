using System.Text.Encodings.Web;
using System.Text.Json;
using CareSheets.Pages;
using CareSheets.Pages.Mates;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Commands;

/// <summary>A group of species as data: verdicts, reasons with their numbers in canonical units, sentences.</summary>
internal static class GatheringJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Print(Site site, Gathering gathering)
    {
        var sentences = new MateSentences(site);
        var fits = new FitSentences(site);
        return JsonSerializer.Serialize(new
        {
            species = gathering.Mates.Select(m => new
            {
                name = m.Name,
                group = m.Group,
                company = m.GroupKind.ToString(),
                ownTank = m.Neighbours == Neighbours.None,
            }),
            verdict = GatheringText.WordOf(gathering.Verdict),
            pairs = gathering.Pairs.Select(pair => new
            {
                one = pair.One.Name,
                other = pair.Other.Name,
                verdict = GatheringText.WordOf(pair.Verdict),
                reasons = pair.Reasons.Select(r => Reason(r, pair.Verdict, sentences)),
            }),
            apart = gathering.Apart.Select(pair => new[] { pair.One.Name, pair.Other.Name }),
            water = gathering.Verdict == Verdict.KeepApart ? null : Water(gathering),
            tank = Tank(gathering, fits, new TankSentences(site)),
        }, Options) + "\n";
    }

    /// <summary>Left out for a group that has to be kept apart, for it is to share none.</summary>
    private static IEnumerable<object> Water(Gathering gathering) =>
        gathering.Water.Where(w => w.IsWorthTelling).Select(w => new
        {
            field = w.Declaration.Field,
            unit = w.Declaration.Dimension.Canonical.Key,
            shared = Range(w.Shared),
            unknown = w.Unknown.Select(m => m.Name),
        });

    private static object Reason(PairReason reason, Verdict pair, MateSentences sentences) => new
    {
        kind = reason.Reason.Kind.ToString(),
        verdict = GatheringText.WordOf(reason.Reason.Weight),
        one = reason.One.Name,
        other = reason.Other.Name,
        field = reason.Reason.Field,
        shared = Range(reason.Reason.Shared),
        ofOne = Details(reason.OfOne),
        ofOther = Details(reason.OfOther),
        sentence = sentences.Of(reason, pair),
    };

    private static Dictionary<string, object> Details(IEnumerable<Detail> details) => details.ToDictionary(
        d => d.Blank,
        d => d.Dimension is { } dimension
            ? new { unit = dimension.Canonical.Key, range = Range(d.Range), word = d.Word }
            : (object)new { word = d.Word });

    private static object? Tank(Gathering gathering, FitSentences fits, TankSentences tanks) =>
        gathering.Tank is not { } tank ? null : new
        {
            litres = tank.Volume?.InLitres,
            fit = gathering.Fit?.ToString(),
            sentence = tanks.Verdict(gathering),
            kilograms = FilledWeight.Estimate(tank),
            together = gathering.Verdict == Verdict.KeepApart || gathering.Room is not { } room ? null : new
            {
                state = room.State.ToString(),
                volumeForAll = room.Asked,
                swissLitres = room.SwissLeast,
                sentences = tanks.Room(gathering),
            },
            missing = tanks.Missing(tank),
            reasons = gathering.InTank.Select(r => new
            {
                species = r.Mate.Name,
                field = r.Reason.Limits.Field,
                fit = r.Reason.Weight.ToString(),
                needs = Range(r.Reason.Limits.Fits),
                given = r.Reason.Figure,
                sentence = fits.Of(r.Mate, r.Reason),
            }),
        };

    /// <summary>An open end is left out, as JSON knows no infinity.</summary>
    private static object? Range(Stretch? range) => range is { } known
        ? new { low = End(known.Low), high = End(known.High) }
        : null;

    private static double? End(double end) => double.IsFinite(end) ? end : null;
}
