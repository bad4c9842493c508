namespace CareSheets.Names.Speech;

/// <summary>A vowel with the consonants that are spoken with it.</summary>
internal sealed record LatinSyllable(
    IReadOnlyList<LatinLetter> Onset, LatinLetter Vowel, IReadOnlyList<LatinLetter> Coda)
{
    /// <summary>Closed by a consonant, or by the x that begins no syllable.</summary>
    public bool IsClosed => Coda.Count > 0;
}
