using CareSheets.Rules.Wording;

namespace CareSheets.Rules;

/// <summary>Where a text speaks of a hazard.</summary>
internal static class HazardTalk
{
    /// <summary>So many sentences after the word still go on about it: "They are feared. That is a myth."</summary>
    private const int Lasting = 2;

    /// <summary>
    /// Every clause of a sentence that has one of these words, and of the next ones. To a semicolon or a "but" is a
    /// sentence here.
    /// </summary>
    public static IReadOnlyList<SaidClause> Near(string text, IReadOnlyList<string> words)
    {
        if (!words.Any(word => Mentions.Holds(text, word)))
            return [];
        var phrases = words.Select(SpokenPhrase.Of).ToList();
        var sentences = SaidText.Of(text).Clauses.GroupBy(c => c.Opening.Start).Select(g => g.ToList()).ToList();
        var speaks = sentences.Select(s => s.Exists(c => phrases.Exists(p => p.In(c).Any()))).ToList();
        return
        [
            .. from sentence in sentences.Index()
               where speaks.Skip(sentence.Index - Lasting).Take(Lasting + 1 - Math.Max(0, Lasting - sentence.Index))
                   .Contains(true)
               from clause in sentence.Item
               select clause,
        ];
    }
}
