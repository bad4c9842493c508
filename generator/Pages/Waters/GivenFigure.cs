using CareSheets.Quantities;

namespace CareSheets.Pages.Waters;

/// <summary>A stated range of no width as the one figure that was given.</summary>
public static class GivenFigure
{
    /// <exception cref="InvalidOperationException">T measures something else, or the upper end is open.</exception>
    public static Given<T> From<T>(StatedRange stated)
        where T : struct, IQuantity<T> => new(stated.As<T>().Max!.Value, stated.Text);
}
