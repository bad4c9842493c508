using CareSheets.Tankmates;

namespace CareSheets.Pages.Mates;

/// <summary>
/// What pages look up about companions. All rules have been applied: the scripts only find the
/// place in a table, join sentences and take the weightiest verdict.
/// </summary>
public static class MateData
{
    public static IReadOnlyList<DataFile> Make(Site site, Acquaintances mates) =>
    [
        new DataFile(Routes.MateNames, "caresheetsNames", Names(site, mates)),
        new DataFile(Routes.MateVerdicts, "caresheetsVerdicts", new VerdictData(site, mates).Make()),
        new DataFile(Routes.MateNeeds, "caresheetsNeeds", new NeedData(site, mates).Make()),
    ];

    /// <summary>Species by place, former names, and the words that the scripts show.</summary>
    private static object Names(Site site, Acquaintances mates)
    {
        var entries = mates.Mates.Select(m => site.Collection.Find(m.Name)!).ToList();
        return new
        {
            files = entries.Select(e => e.Name),
            names = entries.Select(e => e.VernacularName),
            latin = entries.Select(e => e.ScientificName.Value.ToString()),
            former = site.Collection.FormerNames.ToDictionary(f => f.Key, f => mates.PlaceOf(f.Value.Entry.Name)),
            words = site.Words.Group("browser").ToDictionary(w => w.Name, w => w.Text),
        };
    }
}
