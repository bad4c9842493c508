namespace CareSheets.Tankmates.Tanks;

/// <summary>Whether a tank holds enough for a whole group; of each alone <see cref="TankFit"/> speaks.</summary>
/// <param name="Asked">In L, what the entries ask for one after the other, each for its own group.</param>
/// <param name="SwissLeast">In L, the least of the Swiss table for the same groups.</param>
/// <param name="Given">In L, what the tank holds.</param>
/// <param name="IsOfSeveral">Whether more than one species is to share it.</param>
public sealed record RoomForAll(double Asked, double SwissLeast, double Given, bool IsOfSeveral)
{
    /// <summary>
    /// A tank with less than half of what the entries ask for in all does not fit (common practice, no source). Fish of
    /// several species use the same water, so the sum is more than they need; of two species, the larger need alone is
    /// half of the sum or more, so the limit begins to speak with the third.
    /// </summary>
    public const double LeastShare = 0.5;

    /// <summary>In L: figures that only reckoning sets apart are the same.</summary>
    private const double Slip = 1e-6;

    public RoomState State =>
        SwissLeast > Given + Slip ? RoomState.BelowSwissLeast
        : !IsOfSeveral || Asked <= Given + Slip ? RoomState.Enough
        : LeastShare * Asked > Given + Slip ? RoomState.BelowShare : RoomState.BelowSum;

    /// <summary>Between half of the sum and all of it nobody has said that they fit, nor that they do not.</summary>
    public Fit Fit => State switch
    {
        RoomState.Enough => Fit.Fits,
        RoomState.BelowSum => Fit.NotKnown,
        RoomState.BelowShare or RoomState.BelowSwissLeast => Fit.DoesNotFit,
    };

    public static RoomForAll Of(IReadOnlyList<Tankmate> mates, double litres) => new(
        mates.Sum(m => m.Housing.Volume), mates.Sum(SwissSpace.Litres), litres, mates.Count > 1);
}
