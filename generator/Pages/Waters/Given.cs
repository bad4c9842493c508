using CareSheets.Quantities;

namespace CareSheets.Pages.Waters;

/// <summary>A figure with the text in which somebody gave it.</summary>
public sealed record Given<T>(T Value, string Text)
    where T : struct, IQuantity<T>;
