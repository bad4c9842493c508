using CareSheets.Collection;

namespace CareSheets.Pages;

/// <summary>A country's name: the theme's where it has one, else that of ISO 3166-1.</summary>
internal static class CountryName
{
    public static string Of(string code, Words words) =>
        words.Or($"country.{code}", CountryCatalogue.Find(code)?.Name ?? code);
}
