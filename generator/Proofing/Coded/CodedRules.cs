using CareSheets.Collection;

namespace CareSheets.Proofing.Coded;

/// <summary>All rules that need a program.</summary>
internal static class CodedRules
{
    public static readonly IReadOnlyList<string> Names =
    [
        VolumeAgainstSides.Text.Name, VolumeForLength.Text.Name, RoomForTheGrown.Text.Name, BorrowedFigure.Text.Name,
        LifeSpanOfKind.Text.Name, CountriesOfWater.Text.Name, FamilyOfGenus.RuleName, YearOfWork.Text.Name,
        VernacularOfTwo.Text.Name, SentenceTwice.Text.Name, HazardDenied.Text.Name, HazardWithoutAdvice.Text.Name,
        DoseTold.Text.Name, RelativesAlone.Text.Name, LongUnread.Text.Name, ReadAhead.Text.Name,
    ];

    /// <param name="collection">All entries.</param>
    /// <param name="sentences">Those of all entries.</param>
    /// <param name="today">Nothing where the age of entries is not asked about.</param>
    public static IReadOnlyList<ICodedRule> All(
        SpeciesCollection collection, SentenceIndex sentences, DateOnly? today) =>
    [
        new VolumeAgainstSides(), new VolumeForLength(), new RoomForTheGrown(), new BorrowedFigure(collection),
        new LifeSpanOfKind(collection.Entries), new CountriesOfWater(collection), new FamilyOfGenus(),
        new YearOfWork(collection.References), new VernacularOfTwo(collection.Entries), new SentenceTwice(sentences),
        new HazardDenied(collection.Practice.Hazards), new HazardWithoutAdvice(collection.Practice.Hazards),
        new DoseTold(), new RelativesAlone(),
        .. today is { } day ? new ICodedRule[] { new LongUnread(day), new ReadAhead(collection.Entries, day) } : [],
    ];
}
