namespace CareSheets.Tankmates;

/// <summary>Whether species can share a tank, in growing order of concern.</summary>
public enum Verdict
{
    Suits,

    /// <summary>It may go well if somebody watches; also where something needed is unknown.</summary>
    WithCare,

    KeepApart,
}
