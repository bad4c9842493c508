using System.Diagnostics;
using System.IO.Compression;
using System.Text;
using CareSheets.Pages.Mates;
using CareSheets.Tankmates;

namespace CareSheets.Bench.Tankmates;

/// <summary>How long it takes to judge all pairs, with what memory, and how large the pages' data is.</summary>
internal static class TankmatesSpeed
{
    public static bool Run(
        string root, int count, double mostSeconds, double mostMegabytes, double mostDataMegabytes)
    {
        var site = MadeUpCollection.Make(root, count);
        var clock = Stopwatch.StartNew();
        var mates = Acquaintances.Of(site.Collection, (_, _) => null);
        var verdicts = new int[3];
        for (var one = 0; one < count; one++)
        {
            for (var other = one + 1; other < count; other++)
                verdicts[(int)mates.Judge(one, other)]++;
        }
        var seconds = clock.Elapsed.TotalSeconds;
        var megabytes = Process.GetCurrentProcess().PeakWorkingSet64 / 1e6;
        clock.Restart();
        var files = MateData.Make(site, mates);
        var data = files.Sum(f => Compressed(f.Text)) / 1e6;
        var sizes = string.Join(", ", files.Select(f => $"{f.Address} {Compressed(f.Text) / 1e6:F2}"));
        Console.WriteLine(
            $"{count} species, {count * (count - 1) / 2} pairs " +
            $"(suits {verdicts[0]}, care {verdicts[1]}, apart {verdicts[2]}): " +
            $"{seconds:F2} s of {mostSeconds}, peak {megabytes:F0} MB of {mostMegabytes}; " +
            $"data {data:F2} MB gzip of {mostDataMegabytes} ({sizes}), " +
            $"written in {clock.Elapsed.TotalSeconds:F1} s");
        return seconds <= mostSeconds && megabytes <= mostMegabytes && data <= mostDataMegabytes;
    }

    private static long Compressed(string text)
    {
        using var target = new MemoryStream();
        using (var zip = new GZipStream(target, CompressionLevel.Optimal, leaveOpen: true))
            zip.Write(Encoding.UTF8.GetBytes(text));
        return target.Length;
    }
}
