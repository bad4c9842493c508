using System.Text.RegularExpressions;

namespace CareSheets.Rendering;

/// <summary>What looks like an HTML tag or comment in prose.</summary>
internal static partial class TagPattern
{
    [GeneratedRegex(@"<(/?[A-Za-z][A-Za-z0-9-]*[ />]|!--)", RegexOptions.CultureInvariant)]
    public static partial Regex Tag();
}
