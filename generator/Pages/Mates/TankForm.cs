namespace CareSheets.Pages.Mates;

/// <summary>Units in which a tank may be given, the shop's own system first.</summary>
public sealed record TankForm(IReadOnlyList<UnitChoice> Lengths, IReadOnlyList<UnitChoice> Volumes);

/// <summary>A figure of the water that a customer may know.</summary>
public sealed record WaterField(string Key, string Label, IReadOnlyList<UnitChoice> Units);

public sealed record UnitChoice(string Key, string Symbol);
