using CareSheets.Paper.Layout;
using CareSheets.Species;

namespace CareSheets.Pages.Cards;

/// <summary>
/// With whom a species lives, in lines of its card. Nothing friendly stays where the unfriendly has no room:
/// what it does to its own kind stands before its temper, and what it eats stands in one line with it.
/// </summary>
internal sealed class CardCompany(Site site)
{
    private readonly EntryFacts _facts = new(site);

    private Words Words => site.Words;

    /// <summary>What a buyer has to know.</summary>
    public IEnumerable<FactPart> Make(Entry entry)
    {
        yield return Group(entry);
        if (IsFierceToItsKind(entry) && entry.Company.GroupKind != GroupKind.Only)
            yield return OwnKind(entry);
        yield return Others(entry);
    }

    /// <summary>What is good to know.</summary>
    public IEnumerable<FactPart> MakeLess(Entry entry)
    {
        if (!IsFierceToItsKind(entry) && entry.Company.OwnKind.Value != entry.Company.Others.Value)
            yield return OwnKind(entry);
        if (_facts.KeptFromOthers(entry) is not null && entry.Company.Others.Value != "peaceful")
            yield return Temper(entry);
        if (entry.Company.Neighbours is { Value: "of its size" } size)
            yield return Fact("card.beside", Words[$"neighbours.{size.Value}"]);
    }

    private static bool IsFierceToItsKind(Entry entry) => entry.Company.OwnKind.Value == "fierce";

    private FactPart Group(Entry entry)
    {
        var group = _facts.Group(entry);
        return Fact("card.group", group.Value, group.Note) with
        {
            HasSpareNote = entry.Company.GroupKind != GroupKind.Only,
        };
    }

    private FactPart OwnKind(Entry entry) => Fact("card.own_kind", Words[$"ownKind.{entry.Company.OwnKind.Value}"]);

    /// <summary>That it wants none beside it, or else its temper.</summary>
    private FactPart Others(Entry entry) => _facts.KeptFromOthers(entry) is { } none
        ? Fact("card.beside", none)
        : Temper(entry);

    private FactPart Temper(Entry entry) => Fact("card.others", _facts.Others(entry));

    private FactPart Fact(string label, string value, string note = "") =>
        new(CardPlace.Facts, Words[label], value, note);
}
