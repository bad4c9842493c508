namespace CareSheets.Names;

/// <summary>
/// A piece of a printed name. Names are in italics; signs of open nomenclature, strains, codes and
/// authors are not (common usage; the Code leaves it to the printer, General Recommendation 6 of its
/// Appendix B).
/// </summary>
public readonly record struct NamePart(string Text, bool IsItalic)
{
    /// <summary>The pieces in printing order; a space stands between any two.</summary>
    public static IReadOnlyList<NamePart> Of(NameReading name)
    {
        var parts = new List<NamePart>();
        if (name.Genus.Length > 0)
            parts.Add(new NamePart(name.IsAbbreviated ? name.Genus + "." : name.Genus, true));
        if (name.Subgenus is { } subgenus)
            parts.Add(new NamePart($"({subgenus})", true));
        for (var i = 0; i <= name.Epithets.Count; i++)
        {
            for (var q = 0; q < name.Qualifiers.Count; q++)
            {
                if (name.QualifierPlaces[q] == i)
                    parts.Add(new NamePart(name.Qualifiers[q], false));
            }
            if (i < name.Epithets.Count)
                parts.Add(new NamePart(name.Epithets[i], true));
        }
        parts.AddRange(name.Tags.Select(tag => new NamePart($"‘{tag}’", false)));
        parts.AddRange(name.TradeCodes.Select(code => new NamePart(code, false)));
        if (name.Authorship.Length > 0)
            parts.Add(new NamePart(name.Authorship, false));
        return parts;
    }
}
