namespace CareSheets.Quantities;

/// <summary>What a text came to: a value, or the reason why there is none.</summary>
/// <typeparam name="T">What was hoped for.</typeparam>
public sealed class ParseResult<T>
    where T : class
{
    private readonly T? _value;
    private readonly QuantityProblem? _problem;

    private ParseResult(T? value, QuantityProblem? problem) =>
        (_value, _problem) = (value, problem);

    public bool Ok => _problem is null;

    /// <exception cref="InvalidOperationException">There is none: ask <see cref="Ok"/>.</exception>
    public T Value => _value ?? throw new InvalidOperationException($"No value: {_problem}.");

    /// <exception cref="InvalidOperationException">There is none: ask <see cref="Ok"/>.</exception>
    public QuantityProblem Problem =>
        _problem ?? throw new InvalidOperationException($"No problem: {_value}.");

    public static implicit operator ParseResult<T>(T value) => new(value, null);

    public static implicit operator ParseResult<T>(QuantityProblem problem) => new(null, problem);

    /// <summary>Goes on to the next stage of reading unless this one failed.</summary>
    internal ParseResult<TNext> Then<TNext>(Func<T, ParseResult<TNext>> next)
        where TNext : class => _problem is { } problem ? problem : next(Value);
}
