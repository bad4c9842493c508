using CareSheets.Quantities;

namespace CareSheets.Tankmates.Tanks;

/// <summary>
/// A tank by its sides, or by as much as is known of it: its length, its volume or both. What is not known is never
/// guessed.
/// </summary>
public sealed record TankSize
{
    private TankSize(Length? length, Length? width, Length? height, Volume? volume) =>
        (Length, Width, Height, Volume) = (length, width, height, volume);

    /// <summary>Along the front.</summary>
    public Length? Length { get; }

    /// <summary>From front to back.</summary>
    public Length? Width { get; }

    public Length? Height { get; }

    /// <summary>To the brim.</summary>
    public Volume? Volume { get; }

    public static TankSize OfBox(Length length, Length width, Length height) =>
        new(length, width, height, Quantities.Volume.OfBox(length, width, height));

    public static TankSize OfVolume(Volume volume) => new(null, null, null, volume);

    public static TankSize OfLength(Length length, Volume? volume = null) => new(length, null, null, volume);
}
