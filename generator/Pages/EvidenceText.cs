using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Where a figure comes from, in the words of a customer.</summary>
internal sealed class EvidenceText(Site site)
{
    public string Of(Evidence evidence) => evidence.Kind switch
    {
        EvidenceKind.Published => site.Words.Say("sentence.evidence_published", ("source", Cite(evidence.Key))),
        EvidenceKind.Like => site.Words.Say("sentence.evidence_like", ("species", NameOf(evidence.Key))),
        EvidenceKind.SeenHere or EvidenceKind.CommonPractice or EvidenceKind.FromMemory or
        EvidenceKind.FromRelatives =>
            site.Words[$"evidence.{evidence.Kind}"],
    };

    private string Cite(string key) =>
        site.Collection.References.TryGetValue(key, out var work) ? Citations.Short(work) : key;

    private string NameOf(string entry) => site.Collection.Find(entry)?.ScientificName.Value.ToString() ?? entry;
}
