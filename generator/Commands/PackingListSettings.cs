using System.ComponentModel;
using System.Globalization;
using System.Text.RegularExpressions;
using CareSheets.Names;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

internal sealed partial class PackingListSettings : ContentSettings
{
    [CommandArgument(0, "<file>")]
    [Description("The supplier's list: CSV or other separated text, XLSX or XLS.")]
    public string File { get; init; } = "";

    [CommandOption("--supplier <NAME>")]
    [Description("Who sent it; without this the file's name is taken.")]
    public string? SupplierName { get; init; }

    [CommandOption("--date <DAY>")]
    [Description("Day of the arrival, as 2026-11-24; today where none is named.")]
    public string? DayText { get; init; }

    [CommandOption("--answer <LINE=ENTRY>")]
    [Description("What a line means; remembered for this supplier. May be given more than once.")]
    public string[] Answers { get; init; } = [];

    [CommandOption("--again")]
    [Description("Read an arrival's list anew; what people wrote stays, and the old file is kept beside it.")]
    public bool Again { get; init; }

    [CommandOption("--look")]
    [Description("Show what would be written, and write nothing.")]
    public bool LookOnly { get; init; }

    public string Supplier => SupplierName ?? FromFile();

    public DateOnly Day => ParsedDay ?? DateOnly.FromDateTime(DateTime.Now);

    private DateOnly? ParsedDay => DateOnly.TryParseExact(
        DayText, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>Name of the arrival, which its file and papers bear.</summary>
    public string ArrivalName => string.Create(CultureInfo.InvariantCulture, $"{Day:yyyy-MM-dd}-{Slug.From(Supplier)}");

    public string ArrivalsFolder => Path.Combine(Content, "arrivals");

    public string AnswersPath =>
        Path.Combine(ArrivalsFolder, "answers", Slug.From(Supplier) + ".yaml").Replace('\\', '/');

    public override ValidationResult Validate() =>
        base.Validate() is { Successful: false } wrong ? wrong
        : DayText is not null && (ParsedDay is null || ParsedDay.Value.Year is < 2000 or > 2099)
            ? ValidationResult.Error($"--date can't be “{DayText}”: write the day as 2026-11-24.")
        : Slug.From(Supplier).Length == 0 ? ValidationResult.Error("--supplier needs a name with letters.")
        : ValidationResult.Success();

    /// <summary><c>larkwater-2026-11-24.csv</c> is from larkwater.</summary>
    private string FromFile() => NotName().Replace(Path.GetFileNameWithoutExtension(File), " ").Trim();

    [GeneratedRegex(@"[\d_.-]+")]
    private static partial Regex NotName();
}
