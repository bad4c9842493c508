using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>
/// Answers that people wrote into arrivals: batches taken by hand. What the supplier said is read from his
/// list, which is kept beside the arrival; where it is gone, there is nothing to learn.
/// </summary>
public static class AnswerHarvest
{
    /// <param name="arrivals">All arrivals of the shop.</param>
    /// <param name="supplier">The supplier whose lists are asked.</param>
    /// <param name="folder">The folder of the arrivals.</param>
    /// <param name="matcher">Tells names from other texts.</param>
    public static IEnumerable<SupplierAnswer> From(
        IEnumerable<Arrival> arrivals, string supplier, string folder, NameMatcher matcher) =>
        arrivals.Where(a => Slug.From(a.Supplier.Value) == Slug.From(supplier))
            .OrderBy(a => a.Date.Value).SelectMany(a => From(a, folder, matcher));

    private static IEnumerable<SupplierAnswer> From(Arrival arrival, string folder, NameMatcher matcher)
    {
        List<Batch> byHand =
            [.. arrival.Batches.Where(b => b is { Taken: NameTaken.ByHand, Entry: not null, Line: not null })];
        var path = Path.Combine(folder, Path.GetFileName(arrival.List?.Value ?? ""));
        if (byHand.Count == 0 || !File.Exists(path))
            return [];
        var list = new PackingListReader(matcher, new RememberedAnswers([]), new DiagnosticBag()).Read(path, path);
        return from batch in byHand
               from line in list?.Readable ?? []
               where line.Line.Line == batch.Line && line.Line.Said == batch.Said.Value
               select new SupplierAnswer(
                   RememberedAnswers.Asked(line.Line), batch.Entry!.Value, arrival.Date.Value);
    }
}
