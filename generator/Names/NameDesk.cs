using System.Text.RegularExpressions;

namespace CareSheets.Names;

/// <summary>Reads the words of a name in their order: genus, subgenus, epithets with their signs, author.</summary>
internal sealed partial class NameDesk(string[] words)
{
    private static readonly Dictionary<string, string> Signs = new(StringComparer.OrdinalIgnoreCase)
    {
        ["cf"] = "cf.",
        ["aff"] = "aff.",
        ["sp"] = "sp.",
        ["spp"] = "spp.",
        ["spec"] = "sp.",
        ["species"] = "sp.",
        ["nr"] = "nr.",
        ["prox"] = "prox.",
        ["indet"] = "indet.",
        ["?"] = "?",
    };

    /// <summary>Between the epithets of species and subspecies; zoology needs none of them.</summary>
    private static readonly string[] RankMarks = ["ssp.", "ssp", "subsp.", "subsp", "var.", "var", "forma"];

    private readonly List<string> _epithets = [];
    private readonly List<(string Sign, int Place)> _signs = [];
    private readonly List<NameProblem> _problems = [];
    private NameReading _read = new();
    private int _at;
    private bool _isMarked; // a comma stands behind the last epithet

    private string? Next => _at < words.Length ? words[_at] : null;

    public NameReading Read()
    {
        while (words.Length > 1 && Next is { } sign && IsHybridSign(sign))
            TakeHybridSign();
        if (Next is { } genus && Genus().IsMatch(genus))
            TakeGenus(genus);
        if (_read.Genus.Length > 0)
        {
            while (Next is { } word && (TakeSign(word) || TakeEpithet(word)))
                continue;
        }
        TakeAuthor();
        return _read with
        {
            Epithets = _epithets,
            Qualifiers = [.. _signs.Select(q => q.Sign)],
            QualifierPlaces = [.. _signs.Select(q => q.Place)],
            Problems = _problems,
        };
    }

    private static bool IsHybridSign(string word) => word is "×" or "x" or "X";

    private void TakeHybridSign()
    {
        _read = _read with { IsHybrid = true };
        _at++;
    }

    private void TakeGenus(string word)
    {
        var bare = word.TrimStart('×').TrimEnd('.');
        var isShort = word.EndsWith('.') || bare.Length == 1;
        AddIf(!char.IsUpper(bare[0]), NameProblem.GenusWithoutCapital);
        AddIf(isShort, NameProblem.ShortGenus);
        CheckLetters(bare);
        _read = _read with
        {
            Genus = char.ToUpperInvariant(bare[0]) + bare[1..].ToLowerInvariant(),
            IsAbbreviated = isShort,
            IsHybrid = _read.IsHybrid || word[0] == '×',
        };
        _at++;
        if (Next is { } next && Subgenus().IsMatch(next) && _at + 1 < words.Length && char.IsLower(words[_at + 1][0]))
        {
            _read = _read with { Subgenus = next[1..^1] };
            _at++;
        }
    }

    private bool TakeSign(string word)
    {
        if (IsHybridSign(word) || word.Equals("hybrid", StringComparison.OrdinalIgnoreCase))
            _read = _read with { IsHybrid = true };
        else if (Signs.TryGetValue(word.Length > 1 ? word.TrimEnd('.') : word, out var sign))
            _signs.Add((sign, _epithets.Count));
        else if (_epithets.Count == 0 || !RankMarks.Contains(word))
            return false;
        _at++;
        return true;
    }

    private bool TakeEpithet(string word)
    {
        var isCapital = char.IsUpper(word[0]);
        var bare = word.TrimEnd(',');
        if (_isMarked || bare.Length == 0 || _epithets.Count == 2 || !Epithet().IsMatch(bare) ||
            Particle().IsMatch(word) || (isCapital && (_epithets.Count > 0 || AuthorFollows(word))))
            return false;
        AddIf(isCapital, NameProblem.EpithetWithCapital);
        AddIf(bare.Length == 1, NameProblem.OneLetter);
        CheckLetters(bare);
        _epithets.Add(bare.ToLowerInvariant());
        _isMarked = bare != word;
        _at++;
        return true;
    }

    /// <summary>A capital behind a genus is its author where a year comes with it.</summary>
    private bool AuthorFollows(string word) =>
        word.EndsWith(',') || words.Skip(_at + 1).Any(w => Year().IsMatch(w));

    private void CheckLetters(string word) =>
        AddIf(!word.All(c => char.IsAsciiLetter(c) || c == '-'), NameProblem.NotLatinLetters);

    private void TakeAuthor()
    {
        var rest = string.Join(' ', words.Skip(_at));
        var author = _read.Genus.Length == 0 ? null : WrittenAuthor.Read(rest);
        if (author is null)
        {
            _read = _read with { Rest = rest };
            return;
        }
        AddIf(_isMarked, NameProblem.MarkBeforeAuthor);
        _problems.AddRange(author.Problems);
        _read = _read with { Authorship = author.Text, Year = author.Year, Rest = author.Rest };
    }

    private void AddIf(bool isSo, NameProblem problem)
    {
        if (isSo && !_problems.Contains(problem))
            _problems.Add(problem);
    }

    /// <summary>Letters of any alphabet, so that a wrong one is told and not taken for something else.</summary>
    [GeneratedRegex(@"^×?\p{L}[\p{L}-]*\.?$")]
    private static partial Regex Genus();

    [GeneratedRegex(@"^\(\p{Lu}\p{Ll}+\)$")]
    private static partial Regex Subgenus();

    [GeneratedRegex(@"^\p{L}[\p{L}-]*$")]
    private static partial Regex Epithet();

    /// <summary>Small words that authors' names begin with.</summary>
    [GeneratedRegex("^(de|da|do|dos|du|la|le|van|von|der|den|in|ex|et|and)$")]
    private static partial Regex Particle();

    [GeneratedRegex(@"\b1\d{3}\b|\b20\d{2}\b")]
    private static partial Regex Year();
}
