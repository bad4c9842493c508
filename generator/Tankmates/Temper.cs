namespace CareSheets.Tankmates;

/// <summary>How a fish treats others, in growing order of trouble.</summary>
public enum Temper
{
    Peaceful,
    Feisty,
    Territorial,
    Fierce,
}
