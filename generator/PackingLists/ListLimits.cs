namespace CareSheets.PackingLists;

/// <summary>What a list can have at most. The longest real ones stay far below.</summary>
internal static class ListLimits
{
    public const int Bytes = 8 * 1024 * 1024;

    /// <summary>Of a workbook when unpacked.</summary>
    public const long UnpackedBytes = 64L * 1024 * 1024;

    public const int Rows = 20_000;

    public const int Columns = 100;

    public const int LineLength = 2_000;
}
