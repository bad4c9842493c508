using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>
/// Two waters mixed by volume, for what mixes in proportion: hardness, alkalinity, salt, heat, and
/// conductivity nearly so.
/// </summary>
public static class Blend
{
    /// <summary>What a mixture has when so much of it is the first water.</summary>
    public static SumResult<T> Of<T>(T one, T other, Share ofOne)
        where T : struct, IQuantity<T> => Refused<T>() is { } refusal
        ? refusal
        : T.FromCanonical(other.Canonical + ((one.Canonical - other.Canonical) * ofOne.InParts));

    /// <summary>How much of the first water it takes to meet a target.</summary>
    public static SumResult<BlendShare> For<T>(T one, T other, T target)
        where T : struct, IQuantity<T>
    {
        if (Refused<T>() is { } refusal)
            return refusal;
        if (one.Equals(other))
            return target.Equals(one) ? BlendShare.Any : Refuse(RefusalReason.SameWaters, one, other, target);
        var share = (target.Canonical - other.Canonical) / (one.Canonical - other.Canonical);
        return share is >= 0 and <= 1
            ? new BlendShare(Share.FromParts(share))
            : Refuse(RefusalReason.BetweenNoWaters, one, other, target);
    }

    private static Refusal? Refused<T>()
        where T : struct, IQuantity<T> => typeof(T) == typeof(Acidity)
        ? new Refusal(RefusalReason.AcidityDoesNotBlend, T.Dimension, 0, null, null)
        : null;

    private static Refusal Refuse<T>(RefusalReason reason, T one, T other, T target)
        where T : struct, IQuantity<T> => new(
        reason, T.Dimension, target.Canonical,
        Math.Min(one.Canonical, other.Canonical), Math.Max(one.Canonical, other.Canonical));
}
