using System.Text.Json;
using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

/// <summary>One published data set with its optima and its values at fixed variances.</summary>
internal sealed record NestedCase(
    string Name,
    string Data,
    int[] DropRows,
    IReadOnlyList<NestedCase.Optimum> Optima,
    IReadOnlyList<NestedCase.Point> Points)
{
    private static readonly JsonSerializerOptions Options =
        new() { PropertyNameCaseInsensitive = true };

    public static IReadOnlyList<NestedCase> All { get; } = Read();

    /// <summary>Rows are counted from 1 in the file's order, before any is dropped.</summary>
    public NestedSample Sample()
    {
        var rows = ReferenceFile.Rows(Data)
            .Where((_, index) => !DropRows.Contains(index + 1))
            .ToArray();
        var tree = NestedTree.FromPaths([.. rows.Select(row => row[..^1])]);
        return NestedSample.From(
            tree, [.. rows.Select(row => (double?)ReferenceFile.Number(row[^1]))]);
    }

    public override string ToString() => Name;

    public static NestedCase Named(string name) => All.Single(known => known.Name == name);

    private static NestedCase[] Read()
    {
        using var file = JsonDocument.Parse(
            File.ReadAllText(ReferenceFile.PathOf("nested-effects.json")));
        var cases = file.RootElement.GetProperty("cases").Deserialize<NestedCase[]>(Options)!;
        Assert.Equal(7, cases.Length);
        return cases;
    }

    internal sealed record Optimum(
        string Kind,
        double[] Variances,
        double Mean,
        double StandardError,
        double LogLikelihood,
        Effects[]? Effects)
    {
        public LikelihoodKind Likelihood => Enum.Parse<LikelihoodKind>(Kind);
    }

    internal sealed record Point(
        string Name,
        double[] Variances,
        double Mean,
        double StandardError,
        double Full,
        double Restricted,
        double? FullAt60,
        Effects[] Effects);

    /// <summary>
    /// Predicted effects of consecutive nodes of one rank, with the standard error given the
    /// mean and, where tabulated, the full one.
    /// </summary>
    internal sealed record Effects(
        int Rank, int First, double[] Values, double? Conditional, double? Full);
}
