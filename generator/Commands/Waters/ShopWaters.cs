using CareSheets.Diagnostics;
using CareSheets.Housing;
using CareSheets.Names;

namespace CareSheets.Commands.Waters;

/// <summary>The shop's own waters by the names in which the command line knows them.</summary>
internal sealed class ShopWaters(WaterDesk desk)
{
    private const string Tap = "tap";

    private IEnumerable<WaterSource> All => desk.Store is { } store ? WaterSource.Of(store) : [];

    public static bool IsTap(string name) => string.Equals(name, Tap, StringComparison.OrdinalIgnoreCase);

    public WaterSource? Find(string name) =>
        All.FirstOrDefault(w => string.Equals(NameOf(w), name, StringComparison.OrdinalIgnoreCase));

    /// <param name="name">As it was typed.</param>
    /// <param name="withTap">Whether the tap would do.</param>
    public void TellUnknown(string name, bool withTap)
    {
        List<string> known = [.. All.Select(NameOf).Where(n => withTap || n != Tap)];
        desk.Bag.Add(
            WaterCodes.UnknownSystem, SourceSpan.None, ("name", name),
            ("suggestion", EditDistance.Nearest(name, known) is { } nearest ? $"Did you mean {nearest}?"
                : known.Count == 0 ? WaterDescription.ByFigures
                : $"Its waters: {string.Join(", ", known)}."));
    }

    /// <summary>A tap is no tank: it may hold chlorine, is cold, and has no filter.</summary>
    public void RefuseTap(string argument, string typed) => desk.Bag.Add(
        WaterCodes.RawTap, desk.Source(argument, typed).Span,
        ("waters", string.Join(", ", All.Select(NameOf).Where(n => n != Tap).Append(WaterDescription.Example))));

    private static string NameOf(WaterSource water) => water.Kind == WaterSourceKind.Tap ? Tap : water.Water.Name;
}
