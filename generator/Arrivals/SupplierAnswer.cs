namespace CareSheets.Arrivals;

/// <summary>What a person said that a supplier means by a name.</summary>
/// <param name="Said">The name as the supplier's lists have it.</param>
/// <param name="Entry">Name of the entry.</param>
/// <param name="Since">Day of the arrival at which it was answered.</param>
public sealed record SupplierAnswer(string Said, string Entry, DateOnly Since);
