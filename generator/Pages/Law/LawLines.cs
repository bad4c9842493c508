namespace CareSheets.Pages.Law;

/// <summary>What the lists of law say of a species, ready to print; never that anything is allowed.</summary>
/// <param name="Here">Lists that bind the shop: those that name it, those not checked, those without it.</param>
/// <param name="Elsewhere">Lists of other places that name it.</param>
/// <param name="Confirm">That the authority has the last word.</param>
public sealed record LawLines(IReadOnlyList<string> Here, IReadOnlyList<string> Elsewhere, string Confirm)
{
    /// <summary>Everything in one paragraph, for paper.</summary>
    public string InOne => string.Join(' ', Here.Append(Confirm));
}
