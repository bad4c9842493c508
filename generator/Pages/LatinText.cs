namespace CareSheets.Pages;

/// <summary>A sentence on a page, which sets the scientific names in it in their own face when it is printed.</summary>
public sealed record LatinText(string Text)
{
    public override string ToString() => Text;
}
