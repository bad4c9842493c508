namespace CareSheets.Names.Matching;

/// <summary>A word of a name in small letters with its phonetic key, so that neither is made twice.</summary>
internal readonly record struct SoundedWord(string Text, string Key)
{
    public static SoundedWord Genus(string word) => new(word.ToLowerInvariant(), PhoneticKey.OfGenus(word));

    public static SoundedWord Epithet(string word) => new(word.ToLowerInvariant(), PhoneticKey.OfEpithet(word));
}
