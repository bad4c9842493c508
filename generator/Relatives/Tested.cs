namespace CareSheets.Relatives;

/// <summary>A stated value held against what the others foretell.</summary>
/// <param name="Deviate">How many standard deviations it lies above that.</param>
internal readonly record struct Tested(int Figure, int Entry, double Deviate)
{
    public (int Figure, int Entry) Value => (Figure, Entry);
}
