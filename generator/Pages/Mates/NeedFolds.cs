using CareSheets.Tankmates;
using CareSheets.Tankmates.Aspects;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Pages.Mates;

/// <summary>The needs that a group unites, in words of the theme.</summary>
internal sealed class NeedFolds(Words words)
{
    public IReadOnlyList<Fold> Make(IReadOnlyList<Tankmate> mates) =>
    [
        Fold.Make(words["fact.lid"], [.. mates.Select(m => m.Housing.Lid)],
            (a, b) => a > b ? a : b, Lid),
        Fold.Make(words["fact.substrate"], [.. mates.Select(m => (m.Housing.Substrate, true))],
            (a, b) => a.Item2 && b.Item2 && BottomAspect.Common(a.Substrate, b.Substrate) is { } both
                ? (both, true) : (Substrate.Any, false),
            s => Bottom(s.Item2 ? s.Substrate : null)),
        Fold.Make(words.Or("range.flow", words["mate_field.flow"]), [.. mates.Select(m => (Low: m.Flow, High: m.Flow))],
            (a, b) => (Least(a.Low, b.Low), Most(a.High, b.High)), f => Flow(f.Low, f.High)),
        Fold.Make(words["mate_field.oxygen"], [.. mates.Select(m => (Oxygen: m.Oxygen, 0))],
            (a, b) => (Most(a.Oxygen, b.Oxygen), 0), o => Oxygen(o.Oxygen)),
    ];

    /// <summary>The same for a group that is known, in the same order.</summary>
    public IReadOnlyList<Fact> Facts(UnitedNeeds united) =>
    [
        new(words["fact.lid"], Lid(united.Lid)),
        new(words["fact.substrate"], Bottom(united.Bottom)),
        new(words["mate_field.flow"], Flow(united.SlowestFlow, united.FastestFlow)),
        new(words["mate_field.oxygen"], Oxygen(united.Oxygen)),
    ];

    private string Lid(Lid lid) => words[$"lid.{EntryWord.Of(lid)}"];

    private string Bottom(Substrate? bottom) => bottom is { } known
        ? words[$"substrate.{EntryWord.Of(known)}"] : words["mates.no_common_bottom"];

    private string Flow(Flow? slowest, Flow? fastest) => (slowest, fastest) switch
    {
        (null, _) or (_, null) => words["sentence.unknown"],
        ({ } one, { } other) when one == other => words[$"flow.{EntryWord.Of(one)}"],
        ({ } one, { } other) => words.Say("mates.from_to",
            ("from", words[$"flow.{EntryWord.Of(one)}"]), ("to", words[$"flow.{EntryWord.Of(other)}"])),
    };

    private string Oxygen(Oxygen? oxygen) => oxygen is { } known
        ? words[$"oxygen.{EntryWord.Of(known)}"] : words["sentence.unknown"];

    private static T? Least<T>(T? one, T? other)
        where T : struct, Enum =>
        one is null || (other is not null && Comparer<T?>.Default.Compare(other, one) < 0) ? other : one;

    private static T? Most<T>(T? one, T? other)
        where T : struct, Enum => Comparer<T?>.Default.Compare(one, other) >= 0 ? one : other;
}
