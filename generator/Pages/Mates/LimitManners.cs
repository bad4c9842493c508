using CareSheets.Tankmates.Tanks;

namespace CareSheets.Pages.Mates;

/// <summary>
/// How heavy each place among limits weighs, and which sentence tells it, numbered: so scripts judge a figure
/// without knowing who set the limits.
/// </summary>
internal sealed class LimitManners
{
    private static readonly LimitState[] States = Enum.GetValues<LimitState>();

    private readonly List<(string Weights, string Keys)> _known = [];

    /// <summary>By number: weights and keys of sentences, each from within to not given.</summary>
    public IEnumerable<object> All => _known.Select(k => new
    {
        weights = k.Weights.Select(weight => weight - '0'),
        said = k.Keys.Split(' '),
    });

    public int Of(Limits limits)
    {
        var manner = (
            string.Concat(States.Select(s => (int)limits.WeightOf(s))),
            string.Join(' ', States.Select(s => FitSentences.KeyOf(limits, s))));
        if (!_known.Contains(manner))
            _known.Add(manner);
        return _known.IndexOf(manner);
    }
}
