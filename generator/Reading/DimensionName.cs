using System.Text;
using CareSheets.Quantities;

namespace CareSheets.Reading;

/// <summary>A dimension as messages name it: <c>generalHardness</c> is "general hardness".</summary>
internal static class DimensionName
{
    public static string Of(Dimension dimension) => Of(dimension.Key);

    public static string Of(string key)
    {
        var name = new StringBuilder();
        foreach (var c in key)
            name.Append(char.IsAsciiLetterUpper(c) ? $" {char.ToLowerInvariant(c)}" : c.ToString());
        return name.ToString();
    }
}
