using System.Diagnostics;
using System.Globalization;
using CareSheets.Bench;
using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Publishing;
using CareSheets.Quantities;
using CareSheets.Reading;
using CareSheets.Tankmates;

if (args is ["proof", ..])
    return ProofSpeed.Run(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1000);

// Rounds alternate between the two, so that what else the machine does falls on both.
var count = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 1000;
var repository = Directory.GetCurrentDirectory();
var folder = Directory.CreateTempSubdirectory("caresheets-bench-").FullName;
MadeUpContent.Write(repository, folder, count);
var settings = new SiteSettings
{
    Content = Path.Combine(folder, "content"),
    Theme = Path.Combine(repository, "themes", "riffle"),
    Into = Path.Combine(folder, "published"),
};
CopySchemas();

List<(double Wall, double Processor)> ours = [], bare = [];
var pages = MakePages();
var libraries = new BareLibraries(settings.Theme, WordsReader.Read(settings.Theme, new DiagnosticBag())!);
for (var round = 0; round < 4; round++)
{
    var site = Time(() =>
    {
        var bench = new Workbench(settings);
        if (SiteCommand.Make(bench, settings, _ => { }) is null)
            throw new InvalidOperationException(string.Join('\n', bench.Bag.Sorted().Take(5).Select(d => d.Message)));
    });
    var least = Time(() => libraries.Run(settings.Content, Path.Combine(folder, "bare"), pages));
    Console.WriteLine(FormattableString.Invariant(
        $"round {round}: site {site.Wall:0.00} s, bare libraries {least.Wall:0.00} s; ") + FormattableString.Invariant(
        $"of the processors {site.Processor:0.00} s and {least.Processor:0.00} s"));
    if (round > 0) // the first round pays for the JIT
    {
        ours.Add(site);
        bare.Add(least);
    }
}
var check = Time(() => SiteCheck.Check(settings.Into));
Console.WriteLine(FormattableString.Invariant($"reading the written site again takes {check.Wall:0.00} s of that"));
Console.WriteLine(FormattableString.Invariant(
    $"{count} entries, {pages.Count} pages: ratio {ours.Min(o => o.Wall) / bare.Min(b => b.Wall):0.00}, ") +
    FormattableString.Invariant(
    $"of processors {ours.Min(o => o.Processor) / bare.Min(b => b.Processor):0.00} (least of three rounds each)"));
Directory.Delete(folder, recursive: true);
return 0;

IReadOnlyList<IPage> MakePages()
{
    var bench = new Workbench(settings);
    var collection = bench.ReadCollection()!;
    var site = new Site(collection, bench.ReadWords()!, UnitSystem.Both);
    return PageSet.Make(site, Acquaintances.Of(collection, site.Relatives.Suggest), bench.RenderProse(collection));
}

// Time of the processors tells more where others use the machine too.
static (double Wall, double Processor) Time(Action work)
{
    var (watch, before) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
    work();
    return (watch.Elapsed.TotalSeconds, (Environment.CpuUsage.TotalTime - before).TotalSeconds);
}

void CopySchemas()
{
    Directory.CreateDirectory(Path.Combine(folder, "schema"));
    foreach (var path in Directory.GetFiles(Path.Combine(repository, "schema")))
        File.Copy(path, Path.Combine(folder, "schema", Path.GetFileName(path)));
}
