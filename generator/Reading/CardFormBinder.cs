using CareSheets.Diagnostics;
using CareSheets.Paper;

namespace CareSheets.Reading;

/// <summary>The shop's wishes for its cards; what it does not say is A6, upright, on the shop's paper.</summary>
internal static class CardFormBinder
{
    public static CardForm Bind(Fields fields, string paper, DiagnosticBag bag)
    {
        var size = fields.Text("size") is { } text ? Size(text, bag) : PaperSize.A6;
        if (fields.Text("orientation")?.Value is { } orientation)
            size = size.Stand(orientation == "landscape" ? Orientation.Landscape : Orientation.Portrait);
        var sheet = Sheet(fields.Text("sheet")?.Value ?? paper);
        if (Imposition.Of(size, sheet) is null)
            bag.Add(CardCodes.LargerThanSheet, (fields.Text("sheet") ?? fields.Text("size"))!.Span,
                ("size", PaperSizeText.Of(size)), ("sheet", fields.Text("sheet")?.Value ?? paper));
        return new CardForm(size, sheet);
    }

    public static PaperSize? Sheet(string word) => word switch
    {
        "A4" => PaperSize.A4,
        "Letter" => PaperSize.Letter,
        _ => null,
    };

    private static PaperSize Size(Sourced<string> text, DiagnosticBag bag)
    {
        if (PaperSizeText.Read(text.Value) is { } size)
            return size;
        bag.Add(CardCodes.NoSize, text.Span,
            ("size", text.Value), ("form", PaperSizeText.Form), ("limits", PaperSizeText.Limits));
        return PaperSize.A6;
    }
}
