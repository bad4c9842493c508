using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Proofing.Coded;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Proofing;

/// <summary>
/// Holds entries against every rule, those of the fish room's file and those that need a program. What
/// takes the whole collection is prepared once, so that one entry can be proofed in an instant.
/// </summary>
public sealed class RuleProof
{
    private readonly IReadOnlyList<ICodedRule> _coded;
    private readonly SentenceIndex _sentences;
    private readonly DateOnly? _today;

    /// <param name="collection">All entries.</param>
    /// <param name="today">The day on which it is asked how old an entry is; nothing where that is not asked.</param>
    public RuleProof(SpeciesCollection collection, DateOnly? today = null)
        : this(collection, today, new SentenceIndex(collection.Entries.Concat(collection.Unfinished)))
    {
    }

    private RuleProof(SpeciesCollection collection, DateOnly? today, SentenceIndex sentences)
    {
        (Practice, _today, _sentences) = (collection.Practice, today, sentences);
        _coded = CodedRules.All(collection, sentences, today);
    }

    private Practice Practice { get; }

    /// <summary>Names that a waiver may give; nothing when the file of rules could not be read.</summary>
    private HashSet<string>? Known => field ??=
        Practice.RuleNames is { } named ? [.. named, .. CodedRules.Names] : null;

    /// <summary>The same for a collection in which one entry has changed; this one is then out of date.</summary>
    public RuleProof Again(SpeciesCollection changed, string name)
    {
        _sentences.Replace(name, changed.Entries.Concat(changed.Unfinished).FirstOrDefault(e => e.Name == name));
        return new RuleProof(changed, _today, _sentences);
    }

    /// <summary>Everything that the rules have against an entry, waived or not.</summary>
    public IReadOnlyList<Breach> Breaches(Entry entry) =>
    [
        .. Practice.Rules.Where(r => r.IsBrokenBy(entry.Fields)).Select(r => RuleText.Breach(r, entry)),
        .. _coded.SelectMany(r => r.Check(entry)),
    ];

    /// <summary>What is told of an entry: breaches that nobody waived, and waivers that are not right.</summary>
    public IEnumerable<Diagnostic> Describe(Entry entry)
    {
        var breaches = Breaches(entry);
        return breaches.Where(b => WaiverOf(b) is null).Select(b => b.Diagnostic)
            .Concat(entry.Waived.Select(w => Mistake(w, breaches)).OfType<Diagnostic>());
    }

    public IEnumerable<AcceptedDiagnostic> Waived(Entry entry) =>
        from breach in Breaches(entry)
        let waiver = WaiverOf(breach)
        where waiver is not null
        select new AcceptedDiagnostic(breach.Diagnostic, waiver.Reason);

    /// <summary>What is told of the rules themselves, before any entry is looked at.</summary>
    public IEnumerable<Diagnostic> DescribeRules() => PracticeCheck.Describe(Practice);

    private static Waiver? WaiverOf(Breach breach) =>
        breach.Entry.Waived.FirstOrDefault(w => w.Rule.Value == breach.Rule);

    private Diagnostic? Mistake(Waiver waiver, IReadOnlyList<Breach> breaches)
    {
        var name = waiver.Rule.Value;
        if (Known is null || breaches.Any(b => b.Rule == name))
            return null;
        if (!Known.Contains(name))
            return Diagnostic.Of(ProofingCodes.NoRule, waiver.Rule.Span,
                ("name", name), ("suggestion", CollectionLinker.Suggest(name, Known))).At("waived");
        var isAsked = Practice.Rules.Any(r => r.Name.Value == name) || _coded.Any(r => r.Name == name);
        return isAsked
            ? Diagnostic.Of(ProofingCodes.WaivesNothing, waiver.Rule.Span, ("name", name)).At("waived") : null;
    }
}
