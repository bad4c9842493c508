using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing;

/// <summary>Each rule of the fish room's own file against the two examples that stand beside it.</summary>
public sealed class RuleExampleTests
{
    private static IReadOnlyList<Rule> Rules => RealContent.Collection.Practice.Rules;

    public static TheoryData<string> Names() => [.. Rules.Select(r => r.Name.Value)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_example_under_fires_breaks_the_rule(string name) =>
        Assert.True(Rule(name).IsBrokenBy(Rule(name).Fires));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_example_under_passes_is_concerned_and_keeps_the_rule(string name) =>
        Assert.True(Rule(name).IsKeptBy(Rule(name).Passes));

    [Fact]
    public void All_rules_of_the_file_were_read()
    {
        Assert.Equal(RealContent.Collection.Practice.RuleNames!.Count, Rules.Count);
        Assert.True(Rules.Count >= 28, $"Only {Rules.Count} rules.");
    }

    /// <summary>A rule without a work to cite says so; one with a work cites what references.yaml holds.</summary>
    [Fact]
    public void Every_rule_says_where_it_comes_from() => Assert.All(Rules, r => Assert.True(
        r.Evidence.Kind is EvidenceKind.CommonPractice or EvidenceKind.FromMemory or EvidenceKind.SeenHere ||
        RealContent.Collection.References.ContainsKey(r.Evidence.Key), r.Name.Value));

    [Fact]
    public void No_rule_speaks_of_what_an_entry_leaves_out() =>
        Assert.All(Rules, r => Assert.False(r.IsBrokenBy(EntryFields.None), r.Name.Value));

    [Fact]
    public void A_reason_goes_on_into_the_brackets_of_the_hint() => Assert.All(Rules, r =>
    {
        Assert.DoesNotMatch(@"\.$", r.Says);
        Assert.DoesNotMatch(@"\.$", r.Reason);
        Assert.Matches(@"\.$", r.Remedy);
    });

    private static Rule Rule(string name) => Rules.Single(r => r.Name.Value == name);
}
