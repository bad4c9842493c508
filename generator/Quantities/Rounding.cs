namespace CareSheets.Quantities;

/// <summary>
/// Which way a translated figure may move so that it never promises more than was said.
/// </summary>
public enum Rounding
{
    /// <summary>Both ends towards the middle: ranges to keep an animal in.</summary>
    Inward,

    /// <summary>Both ends up: adult sizes, tank sizes.</summary>
    Upward,

    Downward,

    Nearest,
}
