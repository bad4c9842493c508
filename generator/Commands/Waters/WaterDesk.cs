using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Pages.Waters;
using CareSheets.Quantities;
using CareSheets.Reading;
using CareSheets.Species;
using CareSheets.Water;

namespace CareSheets.Commands.Waters;

/// <summary>
/// What a sum on the command line works with: figures as they were typed, the shop's waters and limits, and
/// a bag for what can't be read. An argument is shown in a message like a file of its name.
/// </summary>
internal sealed class WaterDesk(ContentSettings settings)
{
    private readonly Dictionary<string, SourceFile> _files = [];
    private readonly Workbench _bench = new(settings);
    private Store? _store;
    private bool _isStoreRead;

    public DiagnosticBag Bag => _bench.Bag;

    public IReadOnlyDictionary<string, SourceFile> Files => _files;

    /// <summary>Whether the shop's own file is to blame, not the call.</summary>
    public bool IsContentAtFault { get; private set; }

    public Words? Words => field ??= _bench.ReadWords();

    public WaterText Text => new(Words!);

    public SumLines Lines => new(Text, Limits);

    public WaterLimits Limits => Store?.WaterLimits ?? WaterLimits.Default;

    /// <summary>Nothing where the content has no store.yaml; the sums then use their own limits.</summary>
    public Store? Store
    {
        get
        {
            if (_isStoreRead || !File.Exists(Path.Combine(settings.Content, "store.yaml")))
                return _store;
            _isStoreRead = true;
            var own = new DiagnosticBag();
            var reader = new ContentReader(settings.Content, settings.Schemas, own);
            _store = reader.ReadStore();
            IsContentAtFault = own.HasErrors;
            Bag.Add(own.Sorted());
            foreach (var (name, file) in reader.Files)
                _files[name] = file;
            return _store;
        }
    }

    /// <summary>One figure; nothing where it was not given, or can't be read, which is then told.</summary>
    public Given<T>? Read<T>(string argument, string? typed)
        where T : struct, IQuantity<T> =>
        typed is null ? null : Read(argument, typed, T.Dimension) is { } stated ? GivenFigure.From<T>(stated) : null;

    /// <summary>One figure that the sum can't do without.</summary>
    public Given<T>? Need<T>(string argument, string? typed, string why = "")
        where T : struct, IQuantity<T>
    {
        if (typed is null)
            Bag.Add(
                WaterCodes.Missing, SourceSpan.None, ("dimension", DimensionName.Of(T.Dimension)),
                ("why", why.Length > 0 ? why : $"The sum needs {argument}."), ("example", Single(T.Dimension)));
        return Read<T>(argument, typed);
    }

    public StatedRange? Read(string argument, string typed, Dimension dimension)
    {
        var source = Source(argument, typed);
        var declared = new QuantityDeclaration(dimension, Unbounded(dimension), BasisRequired: false);
        var bound = new QuantityBinder(Bag).Bind(source, declared, "");
        if (bound is null || IsBeyond(bound.Value, source))
            return null;
        if (bound.Value.IsSingle)
            return bound.Value;
        Bag.Add(
            WaterCodes.OneFigure, source.Span,
            ("given", bound.Value.Text), ("example", Single(dimension)));
        return null;
    }

    /// <summary>Of most dimensions nothing is too much for a sum.</summary>
    private bool IsBeyond(StatedRange stated, Sourced<string> source)
    {
        if (WaterExtremes.MostOf(stated.Dimension) is not { } most || !((stated.High ?? stated.Low) > most))
            return false;
        Bag.Add(
            WaterCodes.BeyondExtremes, source.Span,
            ("given", stated.Text), ("allowed", $"≤ {WaterText.Show(most, stated.Unit)}"));
        return true;
    }

    /// <summary>The first of several dimensions in which all texts can be read.</summary>
    public static Dimension? Common(IEnumerable<string> typed, params Dimension[] dimensions) =>
        dimensions.FirstOrDefault(d => typed.All(text => QuantityText.Parse(text, d).Ok));

    /// <summary>The value, or a message about why there is none.</summary>
    public T? Accept<T>(SumResult<T> result, Unit? unit = null)
    {
        if (result.Refusal is not { } refusal)
            return result.Value;
        var (given, allowed) = WaterText.Figures(refusal, unit);
        Bag.Add(
            RefusalCodes.Of(refusal.Reason), SourceSpan.None,
            ("given", given), ("allowed", allowed), ("formula", refusal.Formula));
        return default;
    }

    public ShopWaters Waters => new(this);

    public Sourced<string> Source(string argument, string typed)
    {
        var file = new SourceFile(argument, typed);
        _files[argument] = file;
        return new Sourced<string>(typed, file.Span(1, 1, Math.Max(1, typed.Length)));
    }

    /// <summary>On the command line nothing is implausible, only impossible.</summary>
    private static StatedRange Unbounded(Dimension dimension) => new()
    {
        Dimension = dimension,
        Low = null,
        High = null,
        Unit = dimension.Canonical,
        Typed = "",
        Text = "",
    };

    private static string Single(Dimension dimension) => dimension == DimensionCatalogue.Acidity
        ? "7.2"
        : $"20 {dimension.For(UnitSystem.Metric).Symbol}";
}
