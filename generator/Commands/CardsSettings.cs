using System.ComponentModel;
using System.Globalization;
using CareSheets.Paper;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

internal sealed class CardsSettings : ContentSettings
{
    [CommandArgument(0, "[name]")]
    [Description("Species whose cards to print, by file name or scientific name; all of them when none is named.")]
    public string[] Names { get; init; } = [];

    [CommandOption("--into <DIR>")]
    [Description("The folder that the sheets are written to; the whole of it is replaced.")]
    [DefaultValue("cards")]
    public string Into { get; init; } = "cards";

    [CommandOption("--size <SIZE>")]
    [Description("Size of the cards: A6, A7, or two sides such as 4x6in or 90x55mm; store.yaml's when not given.")]
    public string? Size { get; init; }

    [CommandOption("--orientation <WAY>")]
    [Description("portrait or landscape.")]
    public string? Orientation { get; init; }

    [CommandOption("--paper <SHEET>")]
    [Description("The sheet that several are printed on, A4 or Letter, or none for a page of the card's size each.")]
    public string? Sheet { get; init; }

    [CommandOption("--arrival <NAME>")]
    [Description("Cards of what came in an arrival, with price, count and origin; by its file name.")]
    public string? Arrival { get; init; }

    [CommandOption("--stale")]
    [Description("Only cards that no longer show what their entry says.")]
    public bool Stale { get; init; }

    [CommandOption("--trial")]
    [Description("Leave the record of what was printed as it is.")]
    public bool Trial { get; init; }

    [CommandOption("--pdf")]
    [Description("Print the sheets as PDF too, with the Chromium, Chrome or Edge of this machine.")]
    public bool Pdf { get; init; }

    [CommandOption("--browser <FILE>")]
    [Description("The browser to print PDF with, where it is not found by itself.")]
    public string? Browser { get; init; }

    [CommandOption("--today <DAY>")]
    [Description("The day to put on record, such as 2026-11-25; the clock's when not given.")]
    public string? Today { get; init; }

    public DateOnly Day => Today is null
        ? DateOnly.FromDateTime(DateTime.Today)
        : DateOnly.ParseExact(Today, "yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The shop's wishes, but where a call says otherwise.</summary>
    public CardForm Form(CardForm shop)
    {
        var size = Size is null ? shop.Size : PaperSizeText.Read(Size)!.Value;
        return new CardForm(Stand(size), Sheet switch
        {
            null => shop.Sheet,
            "A4" => PaperSize.A4,
            "Letter" => PaperSize.Letter,
            _ => null,
        });
    }

    public override ValidationResult Validate() =>
        base.Validate() is { Successful: false } wrong ? wrong
        : Size is not null && PaperSizeText.Read(Size) is null
            ? ValidationResult.Error(
                $"--size can't be “{Size}”: it is {PaperSizeText.Form}; a card is {PaperSizeText.Limits}.")
        : Orientation is not (null or "portrait" or "landscape")
            ? ValidationResult.Error($"--orientation can't be “{Orientation}”: it is portrait or landscape.")
        : Sheet is not (null or "A4" or "Letter" or "none")
            ? ValidationResult.Error($"--paper can't be “{Sheet}”: it is A4, Letter or none.")
        : Today is not null &&
            !DateOnly.TryParseExact(Today, "yyyy-MM-dd", CultureInfo.InvariantCulture, default, out _)
            ? ValidationResult.Error($"--today can't be “{Today}”: write year-month-day, as in 2026-11-25.")
        : Stale && Arrival is not null
            ? ValidationResult.Error("--stale looks at every printed card, those of arrivals too; leave out --arrival.")
        : ValidationResult.Success();

    private PaperSize Stand(PaperSize size) => Orientation switch
    {
        "portrait" => size.Stand(Paper.Orientation.Portrait),
        "landscape" => size.Stand(Paper.Orientation.Landscape),
        _ => size,
    };
}
