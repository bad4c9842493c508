namespace CareSheets.Pages;

/// <summary>
/// Markup that is already safe, made by the Rendering room only. Everything else that a template
/// prints is text and gets escaped.
/// </summary>
public sealed class Html
{
    internal Html(string markup) => Markup = markup;

    public string Markup { get; }

    public override string ToString() => Markup;
}
