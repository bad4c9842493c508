namespace CareSheets.Tankmates;

/// <summary>Whether fins or feelers are long enough to trail, which invites nippers.</summary>
public enum Fins
{
    Ordinary,
    Trailing,
}
