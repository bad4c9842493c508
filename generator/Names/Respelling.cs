using CareSheets.Names.Speech;

namespace CareSheets.Names;

/// <summary>
/// How to say a scientific name, spelt for readers of English with the stressed syllables in capitals:
/// <c>par-uh-KY-ro-don</c>. The Code of nomenclature has no rule of speech, and other traditions are as good.
/// </summary>
/// <param name="Text">Words of the name in their order.</param>
/// <param name="IsGuess">
/// Spelling alone does not tell: the length of the vowel that decides the stress is not known, or an epithet
/// may be made from the name of a person, who is called as nobody can see.
/// </param>
public sealed record Respelling(string Text, bool IsGuess)
{
    public static Respelling Of(ScientificName name)
    {
        var words = name.ToString().Split([' ', '-']).Select(SpokenWord.Of).ToList();
        return new Respelling(string.Join(' ', words.Select(w => w.Text)), words.Exists(w => w.IsGuess));
    }

    /// <summary>One that a person has written or approved.</summary>
    public static Respelling Approved(string text) => new(text, false);
}
