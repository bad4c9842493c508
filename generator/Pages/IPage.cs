namespace CareSheets.Pages;

/// <summary>
/// A page or paper of the site as a value: ready strings for a template. <see cref="Template"/> is
/// the template's name in the theme, <see cref="Address"/> the file in the site.
/// </summary>
public interface IPage
{
    string Template { get; }

    string Address { get; }

    PageFrame Frame { get; }
}
