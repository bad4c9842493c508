using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>The species, its genus, family or order is one of these.</summary>
public sealed record TaxonIs(IReadOnlyList<string> Names) : Condition
{
    public override Truth Judge(EntryFields entry) =>
        entry.Taxa.Any(Names.Contains) ? Truth.Yes : entry.Taxa.Any() ? Truth.No : Truth.Open;

    public override IEnumerable<string> Fields => ["family"];
}
