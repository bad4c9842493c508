namespace CareSheets.Tests.PackingLists;

/// <summary>Workbooks as spreadsheets saved them before 2007 (XLS, BIFF8), which suppliers still send.</summary>
public sealed class OlderWorkbookTests
{
    /// <summary>pellmere.xls is pellmere.xlsx, saved by LibreOffice Calc 7.4 as "MS Excel 97".</summary>
    [Fact]
    public void The_same_list_in_the_older_form_reads_the_same()
    {
        var (older, newer) = (ListAnswer.Read("pellmere.xls"), ListAnswer.Read("pellmere.xlsx"));
        Assert.True(newer.Lines.Count > 20, $"{newer.Lines.Count}");
        Assert.Equal(newer.Lines.Select(Told), older.Lines.Select(Told));
        Assert.Equal(newer.Skipped.Select(s => s.ToString()), older.Skipped.Select(s => s.ToString()));
    }

    private static string Told(CareSheets.PackingLists.MatchedLine line) =>
        $"{line.Line} {line.Entry} {string.Join(", ", line.Perhaps.Select(c => c.Species.Key))}";
}
