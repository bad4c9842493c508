using System.Text.Json;
using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>axe-core run in a page, with the rules of WCAG 2.0 to 2.2 in levels A and AA.</summary>
internal static class Axe
{
    private const string Run = """
        async () => {
            const found = await axe.run(document, { preload: false, resultTypes: ['violations', 'incomplete'],
                runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
            const lines = list => list.flatMap(rule => rule.nodes.map(node =>
                `${rule.id}: ${node.target.join(' ')} | ${node.failureSummary ?? ''}`));
            return { violations: lines(found.violations), incomplete: lines(found.incomplete),
                passes: found.passes.length };
        }
        """;

    private static readonly Lazy<string> Script = new(Read);

    public static async Task<AxeFound> RunAsync(IPage page)
    {
        await page.EvaluateAsync(Script.Value);
        var found = await page.EvaluateAsync<JsonElement>(Run);
        return new AxeFound(
            Lines(found, "violations"), Lines(found, "incomplete"), found.GetProperty("passes").GetInt32());
    }

    private static IReadOnlyList<string> Lines(JsonElement found, string name) =>
        [.. found.GetProperty(name).EnumerateArray().Select(e => e.GetString()!)];

    private static string Read()
    {
        const string name = "Deque.AxeCore.Commons.Resources.axe.min.js";
        using var stream = typeof(AxeResult).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}

/// <summary>What axe found wrong, what it could not decide, and how many rules were satisfied.</summary>
internal sealed record AxeFound(IReadOnlyList<string> Violations, IReadOnlyList<string> Undecided, int Passes);
