using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>A fish that a line of a list may mean, with what is known of it: at the least its name.</summary>
internal sealed record MeantFish(string Name, EntryFields Fields);
