using System.Diagnostics;

namespace CareSheets.Tests.Support;

/// <summary>
/// How many times as long one work takes as another, in turns within one run: the quickest of each counts, so that
/// a machine that others use too gets more turns, and no clock of any machine is trusted by itself.
/// </summary>
internal static class SpeedRatio
{
    private const int MostTurns = 12;

    /// <summary>Longer before each turn, so that what else the machine does has passed by one of them.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    /// <param name="enough">No further turn is taken once the ratio is below this.</param>
    public static double Of(Action one, Action other, double enough)
    {
        var (quickOne, quickOther) = (TimeSpan.MaxValue, TimeSpan.MaxValue);
        for (var turn = 0; turn < MostTurns && (turn == 0 || quickOne >= enough * quickOther); turn++)
        {
            Thread.Sleep(turn * Pause);
            quickOne = Quicker(quickOne, one);
            quickOther = Quicker(quickOther, other);
        }
        return quickOne / quickOther;
    }

    private static TimeSpan Quicker(TimeSpan best, Action work)
    {
        var clock = Stopwatch.StartNew();
        work();
        return clock.Elapsed < best ? clock.Elapsed : best;
    }
}
