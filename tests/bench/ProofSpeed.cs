using System.Diagnostics;
using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Relatives;

namespace CareSheets.Bench;

/// <summary>
/// How long a running program takes to proof one entry after it was saved, beside proofing all of them
/// and beside reading that one file alone.
/// </summary>
internal static class ProofSpeed
{
    private const int Rounds = 40;

    public static int Run(int count)
    {
        var repository = Directory.GetCurrentDirectory();
        var folder = Directory.CreateTempSubdirectory("caresheets-proof-").FullName;
        MadeUpContent.Write(repository, folder, count);
        var settings = new ContentSettings
        {
            Content = Path.Combine(folder, "content"),
            Theme = Path.Combine(repository, "themes", "riffle"),
        };
        All(settings);
        var all = Time(() => All(settings));
        var desk = ProofDesk.Open(settings, new DiagnosticBag())!;
        var entries = desk.Collection.Entries.Select(e => e.Name).ToList();
        var times = Enumerable.Range(0, Rounds)
            .Select(i => One(desk, settings, entries[i * 7 % count])).Order().ToList();
        Console.WriteLine(FormattableString.Invariant($"{count} entries, all of them: {all * 1000:0} ms"));
        Console.WriteLine(FormattableString.Invariant(
            $"one of them, saved: median {times[Rounds / 2] * 1000:0} ms, ") + FormattableString.Invariant(
            $"90 % within {times[Rounds * 9 / 10] * 1000:0} ms, slowest {times[^1] * 1000:0} ms; ") +
            FormattableString.Invariant($"ratio {all / times[Rounds / 2]:0.0}"));
        Directory.Delete(folder, recursive: true);
        return 0;
    }

    /// <summary>Each saved entry is changed for good, so nothing can be answered from before.</summary>
    private static double One(ProofDesk desk, ContentSettings settings, string name)
    {
        var path = Path.Combine(settings.Content, "species", name + ".md");
        File.WriteAllText(path, File.ReadAllText(path).Replace("group: ", "group: 1", StringComparison.Ordinal));
        return Time(() => desk.Proof(name));
    }

    private static void All(ContentSettings settings)
    {
        var bench = new Workbench(settings);
        var collection = bench.ReadCollection()!;
        bench.Bag.Add(OutlierText.Describe(RelativesEngine.Ask(collection)));
        bench.ProofByRules(collection);
        bench.RenderProse(collection);
    }

    private static double Time(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalSeconds;
    }
}
