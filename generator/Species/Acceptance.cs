using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>
/// A writer's word that a value is right although relatives say otherwise. It holds for the value
/// as it was written then: a later change reopens the question.
/// </summary>
/// <param name="Figure">Name of a care range, or <c>length</c>.</param>
public sealed record Acceptance(Sourced<string> Figure, Sourced<string> Value, string Reason);
