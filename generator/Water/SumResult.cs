namespace CareSheets.Water;

/// <summary>What a sum came to: a value, or the reason why there is none.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public sealed class SumResult<T>
{
    private readonly T? _value;

    private SumResult(T? value, Refusal? refusal) => (_value, Refusal) = (value, refusal);

    public bool Ok => Refusal is null;

    public Refusal? Refusal { get; }

    /// <exception cref="InvalidOperationException">There is none: ask <see cref="Ok"/>.</exception>
    public T Value => Refusal is null
        ? _value!
        : throw new InvalidOperationException($"No value: {Refusal}.");

    public static implicit operator SumResult<T>(T value) => new(value, null);

    public static implicit operator SumResult<T>(Refusal refusal) => new(default, refusal);

    /// <summary>Goes on with the value unless there is none.</summary>
    public SumResult<TNext> Then<TNext>(Func<T, SumResult<TNext>> next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return Refusal is { } refusal ? refusal : next(_value!);
    }
}
