using System.Text;
using CareSheets.Diagnostics;
using CareSheets.PackingLists;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.PackingLists;

/// <summary>A list as the shop of the demonstration reads it, with what is told of it.</summary>
internal static class ReadList
{
    private static readonly Lazy<CareSheets.Names.Matching.NameMatcher> Matcher =
        new(() => CollectionNames.Matcher(RealContent.Collection));

    public static (PackingList List, IReadOnlyList<Diagnostic> Found) Of(string text)
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, text, Encoding.UTF8);
            var bag = new DiagnosticBag();
            var list = new PackingListReader(Matcher.Value, new RememberedAnswers([]), bag).Read(path, "list.csv");
            Assert.True(list is not null, ToySite.Told(bag));
            return (list, bag.Sorted());
        }
        finally
        {
            File.Delete(path);
        }
    }

    /// <summary>One line among others of a list of one text column, in which most say how many.</summary>
    public static MatchedLine? Line(string line)
    {
        var list = Of($"Description\nDanio rerio 3cm 10\nBetta splendens 5cm 4\nPangio kuhlii 6cm 20\n{line}\n").List;
        return list.Lines.SingleOrDefault(l => l.Line.Line == 5);
    }
}
