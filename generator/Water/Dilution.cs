namespace CareSheets.Water;

/// <summary>What is left of a difference when volumes of another water come to one volume.</summary>
public static class Dilution
{
    /// <summary>Poured in at once, with nothing taken out.</summary>
    public static double LeftAfterPouring(double volumes) => 1 / (1 + volumes);

    /// <summary>Dripped in while as much runs over.</summary>
    public static double LeftAfterOverflow(double volumes) => Math.Exp(-volumes);
}
