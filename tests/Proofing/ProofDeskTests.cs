using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Relatives;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing;

/// <summary>A saved entry proofed alone says what a full run says of it.</summary>
public sealed class ProofDeskTests : IDisposable
{
    private readonly Workshop _workshop = new();
    private readonly ContentSettings _settings;

    public ProofDeskTests()
    {
        Directory.Delete(_workshop["content"], recursive: true);
        Workshop.Copy(Repository.At("content"), _workshop["content"]);
        _settings = new ContentSettings { Content = _workshop["content"] };
    }

    [Theory]
    [InlineData("danio-rerio", "group: 8", "group: 3", "PR803", "PR802")]
    [InlineData("danio-rerio", "length: 4.5 cm TL", "length: 45 cm TL", "AU502")]
    [InlineData("hoplisoma-panda", "temperature: 20–25 °C", "temperature: 20–250 °C", "QT314")]
    [InlineData("hoplisoma-panda", "hoplisoma-sterbai.md", "hoplisoma-sterba.md", "LK401")]
    [InlineData("betta-splendens", "lid: tight", "lid: tigth", "SC203")]
    [InlineData("poecilia-reticulata", "formerNames: [", "formerNames: [Danio rerio, ", "LK407")]
    public void It_says_what_a_full_run_says(string entry, string from, string to, params string[] codes)
    {
        var desk = ProofDesk.Open(_settings, new DiagnosticBag())!;
        Assert.Empty(desk.Proof(entry));
        _workshop.Replace($"content/species/{entry}.md", from, to);
        var alone = desk.Proof(entry);
        Assert.Contains(alone, d => codes.Contains(d.Code.Id));
        Assert.Equal(Full(entry).Where(IsSure).Select(Print), alone.Where(IsSure).Select(Print));
    }

    /// <summary>What merely stands out hangs on every digit of all others, and is told by the next full run.</summary>
    private static bool IsSure(Diagnostic found) => found.Code.Id != "AU505";

    /// <summary>
    /// The figures that relatives foretell may differ in a digit, for alone the others learnt from the value as
    /// it was; that the value is told, with its likely slip, may not.
    /// </summary>
    private static string Print(Diagnostic found) => found.Code.Id.StartsWith("AU", StringComparison.Ordinal)
        ? $"{found.Span} {found.Code.Id} {found.Values["value"]}" : $"{found.Span} {found.Message} {found.Hint}";

    [Fact]
    public void What_is_put_right_is_told_no_more()
    {
        var desk = ProofDesk.Open(_settings, new DiagnosticBag())!;
        const string path = "content/species/danio-rerio.md";
        _workshop.Replace(path, "scientificName: Danio rerio", "scientificName: [");
        Assert.NotEmpty(desk.Proof("danio-rerio"));
        _workshop.Replace(path, "scientificName: [", "scientificName: Danio rerio");
        Assert.Empty(desk.Proof("danio-rerio"));
    }

    [Fact]
    public void A_new_entry_is_proofed_beside_the_others()
    {
        var desk = ProofDesk.Open(_settings, new DiagnosticBag())!;
        var text = File.ReadAllText(_workshop["content/species/danio-rerio.md"]);
        _workshop.Write("content/species/danio-twin.md", text);
        Assert.Contains(desk.Proof("danio-twin"), d => d.Code == LinkCodes.FileName);
    }

    public void Dispose() => _workshop.Dispose();

    private IEnumerable<Diagnostic> Full(string entry)
    {
        var bench = new Workbench(_settings);
        var collection = bench.ReadCollection()!;
        bench.Bag.Add(OutlierText.Describe(RelativesEngine.Ask(collection)));
        bench.ProofByRules(collection);
        ProofStep.Run(bench, collection);
        bench.RenderProse(collection);
        return bench.Bag.Sorted().Where(d => d.Span.File.EndsWith($"/{entry}.md", StringComparison.Ordinal));
    }
}
