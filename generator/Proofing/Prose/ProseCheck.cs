using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Prose;

/// <summary>
/// Holds what the prose of an entry says in numbers against the entry's figures: the prose itself, the cautions, and
/// how the sexes are told; and looks for links that are none.
/// </summary>
public static class ProseCheck
{
    public static IEnumerable<Diagnostic> Check(SpeciesCollection collection)
    {
        var names = new SpeciesNames(collection);
        return collection.Entries.AsParallel().AsOrdered().SelectMany(entry => Check(entry, names)).ToList();
    }

    /// <summary>One entry alone, with the names of all made before.</summary>
    internal static IEnumerable<Diagnostic> Check(Entry entry, SpeciesNames names)
    {
        var mentions = new SpeciesMentions(names, entry);
        var disagreed =
            from text in Texts(entry)
            from quantity in ProseReader.Read(text, mentions)
            let figure = EntryFigure.Of(entry, quantity)
            where figure is not null && !Agreement.IsAgreed(quantity, figure)
            select Describe(text, quantity, figure);
        return disagreed.Concat(LinkText.Check(entry, names));
    }

    private static IEnumerable<ProseText> Texts(Entry entry)
    {
        yield return ProseText.OfProse(entry);
        foreach (var caution in entry.Cautions)
            yield return ProseText.OfField(caution, entry.Name);
        if (entry.Adult.Sexes is { } sexes)
            yield return ProseText.OfField(sexes, entry.Name);
    }

    private static Diagnostic Describe(ProseText text, ProseQuantity quantity, EntryFigure figure) =>
        Diagnostic.Of(ProseCodes.Disagrees, text.Place(quantity.Start, quantity.Length),
            ("words", string.Join(' ', text.Text.Substring(quantity.Start, quantity.Length)
                .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))),
            ("label", figure.Label), ("value", figure.Text))
            .With([new RelatedSpan(figure.Span, $"{figure.Label} is {figure.Text}")]);
}
