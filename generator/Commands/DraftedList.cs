using CareSheets.PackingLists;
using CareSheets.Relatives;

namespace CareSheets.Commands;

/// <summary>A list with drafts of the entries that it lacked; their lines are taken for them.</summary>
internal sealed record DraftedList(PackingList List, IReadOnlyList<Draft> Drafts);
