using CareSheets.Quantities;

namespace CareSheets.Tankmates;

/// <summary>
/// Who can swallow whom. Prey must pass the mouth, so its body depth is compared with a share of
/// the predator's standard length; and prey longer than about half a predator is not taken whole.
/// </summary>
/// <remarks>
/// Depth: the deepest prey measured was 27 % of the standard length in <i>Cephalopholis urodeta</i>
/// and 20 % in <i>Paracirrhites forsteri</i> (Mihalitsis &amp; Bellwood 2017, PLoS ONE 12:e0184679).
/// Those two stand for medium and small mouths; 10 % for tiny and 40 % for large ones is common
/// practice, no source.
/// Length: in seven freshwater piscivores the median prey was 10–20 % of the predator's total
/// length, the longest 32–46 % (Gaeta et al. 2018, PLoS ONE 13:e0194092).
/// Where a basis has to be changed, TL is 1.14 to 1.25 times SL (five species, morphometric table
/// of the FishXing help file), and the end that makes the predator larger or the prey smaller is
/// taken. A disc width is taken for a standard length (common practice, no source).
/// All numbers are for grown fish; young ones are in more danger.
/// </remarks>
public static class Predation
{
    /// <summary>Longest prey on record, as a share of the predator's total length.</summary>
    public const double LongestPrey = 0.46;

    /// <summary>Up to this share even deep-bodied prey counts as taken (low end of the longest).</summary>
    public const double ShortPrey = 0.33;

    /// <summary>What piscivores usually take: upper end of the medians.</summary>
    public const double UsualPrey = 0.20;

    /// <summary>Near misses by a fifth still ask for care (common practice, no source).</summary>
    public const double NearMiss = 1.2;

    /// <summary>Beyond this ratio fish get hurt at feeding without being hunted (common practice).</summary>
    public const double MuchLarger = 4;

    private const double WidestPerDepth = 2;
    private const double LeastTotalOverStandard = 1.14;
    private const double MostTotalOverStandard = 1.25;

    /// <summary>Deepest prey that passes the mouth, in cm.</summary>
    /// <remarks>
    /// The measured fish were of ordinary build. That no mouth opens wider than twice the depth of
    /// its own body, which matters for eels, is common practice, no source.
    /// </remarks>
    public static double Gape(Body predator) => LargestStandard(predator) *
        Math.Min(GapeShare(predator.Mouth), WidestPerDepth * DepthShare(predator.Shape));

    /// <summary>Longest prey that it takes whole, in cm of total length.</summary>
    public static double Reach(Body predator) => LongestPrey * LargestTotal(predator);

    /// <summary>Depth of the smallest grown fish, in cm.</summary>
    public static double Depth(Body prey) => DepthShare(prey.Shape) * SmallestStandard(prey);

    /// <summary>Length of the largest grown fish with its tail, in cm.</summary>
    public static double LargestTotal(Body body) => body.Basis == LengthBasis.Total
        ? body.Length.High : body.Length.High * MostTotalOverStandard;

    /// <summary>Length of the smallest grown fish with its tail, in cm.</summary>
    public static double SmallestTotal(Body body) => body.Basis == LengthBasis.Total
        ? body.Length.Low : body.Length.Low * LeastTotalOverStandard;

    public static Verdict Judge(Body predator, Body prey) => predator.Appetite switch
    {
        Appetite.None => Verdict.Suits,
        Appetite.Opportunist => JudgeOpportunist(predator, prey),
        Appetite.Hunter => JudgeHunter(predator, prey),
    };

    /// <summary>Share of a predator's standard length that the deepest prey may have.</summary>
    public static double GapeShare(Mouth mouth) => mouth switch
    {
        Mouth.Tiny => 0.10,
        Mouth.Small => 0.20,
        Mouth.Medium => 0.27,
        Mouth.Large => 0.40,
    };

    /// <summary>
    /// Body depth without fins as a share of standard length: common practice, no source. Chosen
    /// low, for shallow prey is in more danger; the weight of such a body agrees with the
    /// length-weight relations of Froese, Thorson &amp; Reyes 2014 (J. Appl. Ichthyol. 30:78–85)
    /// within their spread.
    /// </summary>
    public static double DepthShare(BodyShape shape) => shape switch
    {
        BodyShape.EelLike => 0.06,
        BodyShape.Elongated => 0.15,
        BodyShape.Fusiform => 0.24,
        BodyShape.Deep => 0.40,
        BodyShape.Disc => 0.70,
        BodyShape.Flattened => 0.20,
    };

    private static Verdict JudgeHunter(Body predator, Body prey)
    {
        var (length, total) = (SmallestTotal(prey), LargestTotal(predator));
        if (length <= ShortPrey * total || Fits(predator, prey, 1))
            return Verdict.KeepApart;
        return length <= LongestPrey * total || Fits(predator, prey, NearMiss)
            ? Verdict.WithCare : Verdict.Suits;
    }

    private static Verdict JudgeOpportunist(Body predator, Body prey) =>
        !Fits(predator, prey, 1) ? Verdict.Suits
        : SmallestTotal(prey) <= UsualPrey * LargestTotal(predator) ? Verdict.KeepApart
        : Verdict.WithCare;

    /// <summary>Whether prey passes the mouth and is no longer than the reach, each times the margin.</summary>
    internal static bool Fits(Body predator, Body prey, double margin) =>
        Depth(prey) <= margin * Gape(predator) && SmallestTotal(prey) <= margin * Reach(predator);

    private static double LargestStandard(Body body) => body.Basis == LengthBasis.Total
        ? body.Length.High / LeastTotalOverStandard : body.Length.High;

    private static double SmallestStandard(Body body) => body.Basis == LengthBasis.Total
        ? body.Length.Low / MostTotalOverStandard : body.Length.Low;
}
