namespace CareSheets.Tankmates;

/// <summary>Whether a species eats other fish, in growing order of danger to smaller company.</summary>
public enum Appetite
{
    /// <summary>Takes no grown fish; fry are another matter, for nearly all fish eat those.</summary>
    None,

    /// <summary>Hunts smaller animals and has the mouth to take a small fish in passing.</summary>
    Opportunist,

    /// <summary>Fish are its prey: its diet or its record says so.</summary>
    Hunter,
}
