using CareSheets.Tankmates.Aspects;

namespace CareSheets.Tankmates;

/// <summary>
/// All reasons that one aspect gives among a list of species. Each facet is judged against each
/// once, so the work grows with the square of the facets, not of the species.
/// </summary>
public sealed class AspectTable
{
    private readonly int[] _facetOf;
    private readonly int[] _sets;
    private readonly int _width;

    public AspectTable(IAspect aspect, IReadOnlyList<Tankmate> mates)
    {
        Aspect = aspect;
        var index = new Dictionary<object, int>();
        var examples = new List<Tankmate>();
        _facetOf = [.. mates.Select(mate =>
        {
            if (!index.TryGetValue(aspect.Facet(mate), out var facet))
            {
                index[aspect.Facet(mate)] = facet = examples.Count;
                examples.Add(mate);
            }
            return facet;
        })];
        (Examples, _width) = (examples, examples.Count);
        _sets = new int[_width * _width];
        Sets = Judge();
    }

    public IAspect Aspect { get; }

    /// <summary>A species of each facet, by the facet's number.</summary>
    public IReadOnlyList<Tankmate> Examples { get; }

    /// <summary>Every set of reasons that occurs, by number; 0 is none at all.</summary>
    public IReadOnlyList<IReadOnlyList<Reason>> Sets { get; }

    public int FacetOf(int mate) => _facetOf[mate];

    /// <summary>Number of the set of reasons that a facet gives against another.</summary>
    public int SetOf(int one, int other) => _sets[(one * _width) + other];

    /// <summary>What a species gives against another, by their places in the list.</summary>
    public IReadOnlyList<Reason> Between(int one, int other) => Sets[SetOf(FacetOf(one), FacetOf(other))];

    private List<IReadOnlyList<Reason>> Judge()
    {
        var sets = new List<IReadOnlyList<Reason>> { Array.Empty<Reason>() };
        var known = new Dictionary<IReadOnlyList<Reason>, int>(new SameReasons()) { [sets[0]] = 0 };
        for (var one = 0; one < _width; one++)
        {
            for (var other = 0; other < _width; other++)
            {
                IReadOnlyList<Reason> reasons = [.. Aspect.Judge(Examples[one], Examples[other])];
                if (!known.TryGetValue(reasons, out var set))
                {
                    known[reasons] = set = sets.Count;
                    sets.Add(reasons);
                }
                _sets[(one * _width) + other] = set;
            }
        }
        return sets;
    }

    private sealed class SameReasons : IEqualityComparer<IReadOnlyList<Reason>>
    {
        public bool Equals(IReadOnlyList<Reason>? x, IReadOnlyList<Reason>? y) =>
            x is not null && y is not null && x.SequenceEqual(y);

        public int GetHashCode(IReadOnlyList<Reason> reasons) =>
            reasons.Aggregate(0, (hash, reason) => HashCode.Combine(hash, reason));
    }
}
