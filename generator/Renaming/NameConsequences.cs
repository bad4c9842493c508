using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Regulations;
using CareSheets.Relatives;
using CareSheets.Species;

namespace CareSheets.Renaming;

/// <summary>What follows from changes of names, found by comparing the collection before with that after.</summary>
public sealed class NameConsequences(
    IReadOnlyList<NameMove> moves, SpeciesCollection before, SpeciesCollection after, LawBook law)
{
    private readonly RelativesEngine _relativesBefore = RelativesEngine.Ask(before);
    private readonly RelativesEngine _relativesAfter = RelativesEngine.Ask(after);

    /// <summary>In the order in which a person wants to know.</summary>
    public IEnumerable<string> Lines()
    {
        foreach (var move in moves)
        {
            foreach (var line in OfMove(move))
                yield return line;
        }
        foreach (var line in MergedGenus.Lines(moves, before).Concat(Laws()).Concat(Genera()))
            yield return line;
        foreach (var line in Estimates().Concat(Flagged()))
            yield return line;
    }

    private IEnumerable<string> OfMove(NameMove move)
    {
        yield return $"{move.OldName} becomes {move.Name}.";
        yield return $"  file: species/{move.Entry.Name}.md becomes species/{move.Name.Slug}.md";
        yield return $"  page: species/{move.Name.Slug}.html; species/{move.Entry.Name}.html leads on to it";
        yield return $"  papers: sheet and card of {move.OldName} go, those of {move.Name} come; print them again";
        if (move.Authorship != move.Entry.Authorship.Value)
            yield return $"  author: {move.Authorship.Text} instead of {move.Entry.Authorship.Value.Text} " +
                "(ICZN Art. 51.3)";
        if (move.OtherEnding is { } ending)
            yield return $"  ending: {move.Name.Genus} asks for {ending} if {move.Name.Epithet} is an adjective " +
                "(ICZN Art. 34.2)";
        yield return $"  former names: {string.Join(", ", move.FormerNames)}";
        if (move.IsBack)
            yield return $"  {move.OldName} stays among them; if it was a mistake, take it out of formerNames by hand";
        yield return $"  said: {Respelling.Of(move.Name).Text}";
        if (EntryEdit.DropsSay(move))
            yield return $"  the approved way of saying it ({move.Entry.Say!.Value}) is of the old name " +
                "and is taken out";
        var moved = after.Find(move.Name.Slug)!;
        var (now, old) = (Names(after.Congeners(moved)), Names(before.Congeners(move.Entry)));
        yield return $"  relatives in its genus: {now} instead of {old}";
        if (GenusTable.Known.Find(move.Name.Genus) is { } genus && genus.Family != moved.Family.Value)
            yield return $"  family: {genus.Name} is in {genus.Family} by our table, " +
                $"the entry says {moved.Family.Value}";
    }

    /// <summary>Names of old and new are both looked up, for lists are slow to follow.</summary>
    private IEnumerable<string> Laws()
    {
        var finder = new RegulationFinder(law.Lists, after.Store.Jurisdiction);
        foreach (var move in moves)
        {
            static List<string> Listed(RegulationStatus status) =>
                [.. status.Of(OutcomeKind.Listed).Select(o => $"{o.List.Title.Value} as {o.Rule!.Name.Value}")];
            var (old, now) = (Listed(finder.Of(move.Entry)), Listed(finder.Of(after.Find(move.Name.Slug)!)));
            foreach (var list in now.Except(old))
                yield return $"{move.Name} is named by {list}, {move.OldName} was not. Ask the authority.";
            foreach (var list in now.Intersect(old))
                yield return $"{move.Name} is named by {list}, as before. Ask the authority under which name.";
            foreach (var list in old.Except(now))
                yield return $"{move.OldName} was named by {list}, {move.Name} is not. Ask the authority.";
        }
    }

    private IEnumerable<string> Genera()
    {
        var (old, now) = (before.Genera.Select(g => g.Name).ToHashSet(), after.Genera.Select(g => g.Name).ToHashSet());
        foreach (var genus in old.Except(now))
            yield return $"The genus {genus} has no entry any more; its page leads on to where those went.";
        foreach (var genus in now.Except(old))
            yield return $"The genus {genus} gets a page.";
    }

    /// <summary>Estimates of figures that an entry leaves open, for only those are shown.</summary>
    private IEnumerable<string> Estimates()
    {
        foreach (var entry in before.Entries)
        {
            var now = After(entry);
            foreach (var range in before.Ranges.Where(r => r.ComparedAmongRelatives && entry.Range(r.Field) is null))
            {
                var (old, other) = (Text(_relativesBefore, entry, range), Text(_relativesAfter, now, range));
                if (old != other)
                    yield return $"The estimate of {range.Label} for {now.ScientificName.Value}: " +
                        $"{other} instead of {old}.";
            }
        }
    }

    private IEnumerable<string> Flagged()
    {
        static HashSet<string> Of(RelativesEngine engine, Func<Entry, string> name) =>
            [.. engine.Outliers.Select(o => $"{o.Figure.Declaration.Label} of {name(o.Entry)}")];
        var old = Of(_relativesBefore, e => After(e).ScientificName.Value.ToString());
        var now = Of(_relativesAfter, e => e.ScientificName.Value.ToString());
        foreach (var flag in now.Except(old))
            yield return $"{flag} no longer fits its relatives.";
        foreach (var flag in old.Except(now))
            yield return $"{flag} fits its relatives now.";
    }

    private Entry After(Entry entry) =>
        after.Find(moves.FirstOrDefault(m => m.Entry == entry)?.Name.Slug ?? entry.Name)!;

    private static string Text(RelativesEngine engine, Entry entry, CareRangeDeclaration range)
    {
        var estimate = EstimateMaker.Make(engine, entry, range.Field);
        return estimate is { Verdict: EstimateVerdict.Estimated, Range: { } found }
            ? DraftText.Range(range.Dimension, found.Low, found.High)
            : "nothing";
    }

    private static string Names(IEnumerable<Entry> entries)
    {
        const int most = 4;
        var names = entries.Select(e => e.ScientificName.Value.ToString()).ToList();
        return names.Count == 0 ? "none"
            : string.Join(", ", names.Take(most)) + (names.Count > most ? $" and {names.Count - most} more" : "");
    }
}
