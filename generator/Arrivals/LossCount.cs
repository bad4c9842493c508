namespace CareSheets.Arrivals;

/// <summary>
/// Deaths of a batch up to the seventh day, those found dead in the bag among them. Most deaths of a
/// shipment fall in the week after it (Lim, Dhert and Sorgeloos 2003, Aquaculture Research
/// 34:923-935), so a count at unpacking alone flatters the supplier.
/// </summary>
/// <param name="OnArrival">Of the promised number, those not alive when the bag was opened.</param>
/// <param name="Later">Those that died from then to the seventh day, cumulative.</param>
/// <param name="Of">The promised number, or those alive where the list promises none; never 0.</param>
public sealed record LossCount(int OnArrival, int Later, int Of)
{
    public const int Days = 7;

    /// <summary>The share from which on somebody should look for the cause: common practice, no source.</summary>
    public const double AlarmFrom = 0.05;

    public int Lost => OnArrival + Later;

    /// <summary>0 to 1.</summary>
    public double Share => (double)Lost / Of;

    public bool IsAlarming => Share >= AlarmFrom;

    /// <summary>Nothing before the bags were opened, or where nobody counted.</summary>
    public static LossCount? From(Arrival arrival, Batch batch)
    {
        if (batch.Alive?.Value is not { } alive || (batch.Count?.Value ?? alive) is not (> 0 and var of))
            return null;
        var last = arrival.Date.Value.AddDays(Days);
        var later = batch.Losses.Where(l => l.Date.Value <= last).Sum(l => l.Count.Value);
        return new LossCount(Math.Max(0, of - alive), later, of);
    }
}
