namespace CareSheets.Commands;

/// <summary>What a run tells the shell.</summary>
internal static class ExitCode
{
    public const int Clean = 0;

    /// <summary>Something in the content needs a person.</summary>
    public const int ContentNeedsAPerson = 1;

    /// <summary>The program was called in a way that it does not know.</summary>
    public const int WrongUse = 2;

    public const int DefectOfOurs = 3;
}
