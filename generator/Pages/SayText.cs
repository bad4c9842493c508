using CareSheets.Names;

namespace CareSheets.Pages;

/// <summary>How to say a name, with a word of doubt where the spelling does not tell the stress.</summary>
internal sealed class SayText(Words words)
{
    public string Of(Respelling respelling) => respelling.IsGuess
        ? words.Say("sentence.say_perhaps", ("say", respelling.Text))
        : words.Say("sentence.say", ("say", respelling.Text));
}
