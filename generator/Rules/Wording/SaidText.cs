using System.Runtime.CompilerServices;

namespace CareSheets.Rules.Wording;

/// <summary>
/// A running text as words in clauses, for questions about what is said near a phrase. The address of a
/// Markdown link is no word of the text; a hyphen parts words as a space does.
/// </summary>
public sealed class SaidText
{
    private const int LongestAddress = 200;

    /// <summary>Words with which a new clause begins.</summary>
    private static readonly HashSet<string> Turns =
        ["but", "though", "although", "while", "whereas", "yet", "unless", "until"];

    /// <summary>A text is asked for a hundred phrases, and taken apart once.</summary>
    private static readonly ConditionalWeakTable<string, SaidText> Known = [];

    private readonly List<SaidClause> _clauses = [];
    private readonly HashSet<string> _words = [];

    private SaidText(string text) => Read(text);

    public static SaidText Of(string text) => Known.GetValue(text, said => new SaidText(said));

    public IReadOnlyList<SaidClause> Clauses => _clauses;

    /// <summary>Every place where a text says a phrase within a clause.</summary>
    public static IEnumerable<Said> Find(string text, string phrase) => Find(text, [SpokenPhrase.Of(phrase)]);

    /// <summary>The same of several phrases, in their order.</summary>
    public static IEnumerable<Said> Find(string text, IReadOnlyList<SpokenPhrase> phrases)
    {
        var said = Of(text);
        return said.Find(phrases.Where(phrase => phrase.MayStandAmong(said._words)));
    }

    private IEnumerable<Said> Find(IEnumerable<SpokenPhrase> phrases) =>
        phrases.SelectMany(phrase => _clauses.SelectMany(phrase.In));

    private void Read(string text)
    {
        var (words, sentence) = (new List<SaidWord>(), new List<SaidWord>());
        for (var i = 0; i < text.Length;)
        {
            if (IsWord(text, i))
            {
                var word = WordAt(text, i);
                if (Turns.Contains(word.Text))
                    (words, sentence) = (Ended(words, sentence), []);
                words.Add(word);
                _words.Add(word.Text);
                sentence.Add(word);
                i = word.End;
                continue;
            }
            if (Ends(text, i) is var how and not Break.None)
                (words, sentence) = (Ended(words, sentence), how == Break.Sentence ? [] : sentence);
            i = AfterAddress(text, i);
        }
        Ended(words, sentence);
    }

    private List<SaidWord> Ended(List<SaidWord> words, List<SaidWord> sentence)
    {
        if (words.Count > 0)
            _clauses.Add(new SaidClause(words, sentence[0]));
        return [];
    }

    private static SaidWord WordAt(string text, int start)
    {
        var end = start;
        while (end < text.Length && (IsWord(text, end) || IsInside(text, end)))
            end++;
        return new SaidWord(text[start..end].Replace('’', '\'').ToLowerInvariant(), start, end);
    }

    private static bool IsWord(string text, int at) => char.IsLetterOrDigit(text[at]);

    /// <summary>An apostrophe between letters, a point or a comma between digits.</summary>
    private static bool IsInside(string text, int at) => at > 0 && at + 1 < text.Length &&
        (text[at] is '\'' or '’' ? char.IsLetter(text[at - 1]) && char.IsLetter(text[at + 1])
            : text[at] is '.' or ',' && char.IsAsciiDigit(text[at - 1]) && char.IsAsciiDigit(text[at + 1]));

    private enum Break
    {
        None,
        Clause,
        Sentence,
    }

    private static Break Ends(string text, int at) => text[at] switch
    {
        '.' or '!' or '?' or ';' or ':' => Break.Sentence,
        '\n' when at + 1 < text.Length && text[at + 1] == '\n' => Break.Sentence,
        ',' or '(' or ')' or '—' => Break.Clause,
        _ => Break.None,
    };

    private static int AfterAddress(string text, int at)
    {
        if (text[at] != ']' || at + 1 >= text.Length || text[at + 1] != '(')
            return at + 1;
        var end = text.IndexOf(')', at, Math.Min(LongestAddress, text.Length - at));
        return end < 0 ? at + 1 : end + 1;
    }
}
