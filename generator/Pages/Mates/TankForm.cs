namespace CareSheets.Pages.Mates;

/// <summary>Units in which a tank may be given, the shop's own system first.</summary>
public sealed record TankForm(UnitSelect Sides, UnitSelect Volume);

/// <summary>A figure of the water that a customer may know, and its units: none for pH.</summary>
/// <param name="Id">Of its field in the page.</param>
/// <param name="Key">The care range.</param>
/// <param name="Value">What is meant where nothing is written: no salt is fresh water; else empty.</param>
public sealed record WaterField(string Id, string Key, string Label, UnitSelect? Unit, string Value);

/// <summary>A choice of units: the id of its field, what it is called, and what there is.</summary>
public sealed record UnitSelect(string Id, string Label, IReadOnlyList<UnitChoice> Units);

public sealed record UnitChoice(string Key, string Symbol);

/// <summary>A list that opens: its id, its heading, and the number of its sign (3 is not known).</summary>
public sealed record AnswerList(string Id, string Heading, string Verdict);
