using CareSheets.Species;

namespace CareSheets.Telling;

/// <summary>Something in which a species stands apart from others of the collection.</summary>
/// <param name="Topic">What it is about, such as <c>length</c>.</param>
/// <param name="Circle">Whom it is held against.</param>
/// <param name="Others">How many others state it too.</param>
/// <param name="Beyond">How many of them it goes beyond, or that do not share the word.</param>
/// <param name="Surprise">
/// -ln of the share, itself included, that goes as far or shares the word: 0 for what all do.
/// </param>
public abstract record Distinction(
    string Topic, Circle Circle, int Others, int Beyond, double Surprise);

/// <summary>A figure larger or smaller than most others have.</summary>
/// <param name="Value">The figure as the entry states it.</param>
/// <param name="Next">The nearest of those that it goes beyond.</param>
public sealed record FigureDistinction(
    string Topic, Circle Circle, int Others, int Beyond, double Surprise,
    bool IsHigh, TraitValue Value, Entry NextEntry, TraitValue Next)
    : Distinction(Topic, Circle, Others, Beyond, Surprise);

/// <summary>A word that few others share.</summary>
/// <param name="Word">As the entry has it, such as <c>colony</c>.</param>
/// <param name="All">All words that the entry has there.</param>
public sealed record WordDistinction(
    string Topic, Circle Circle, int Others, int Beyond, double Surprise, string Word, IReadOnlyList<string> All)
    : Distinction(Topic, Circle, Others, Beyond, Surprise);
