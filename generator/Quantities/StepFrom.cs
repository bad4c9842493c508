namespace CareSheets.Quantities;

/// <summary>
/// The distance between neighbouring figures from a certain magnitude on (inclusive), both in the
/// unit it belongs to: people round large things more coarsely than small ones.
/// </summary>
public readonly record struct StepFrom(double From, double Step);
