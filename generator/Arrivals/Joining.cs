namespace CareSheets.Arrivals;

/// <summary>A system whose fish wait longer because others join them.</summary>
public sealed record Joining(string System, DateOnly Old, DateOnly New);
