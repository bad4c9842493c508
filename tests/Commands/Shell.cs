using CareSheets.Tests.Support;

namespace CareSheets.Tests.Commands;

/// <summary>Calls of <c>water</c> in a workshop of their own, as processes.</summary>
internal static class Shell
{
    private const string Waters = """
        tap: { temperature: 12 °C, ph: 7.6, hardness: 12 °dH, carbonateHardness: 9 °dKH }
        systems:
          - { name: Soft, temperature: 25.5 °C, ph: 6.2, hardness: 3 °dH, carbonateHardness: 1.5 °dKH }
          - { name: Hard, temperature: 25 °C, ph: 7.9, hardness: 22 °dH, carbonateHardness: 12 °dKH }

        """;

    /// <param name="arguments">After <c>water</c>.</param>
    /// <param name="store">Lines added to store.yaml; without, there is no store.yaml at all.</param>
    public static (int Exit, string Text, string Errors) Water(string[] arguments, string? store = Waters)
    {
        using var workshop = new Workshop();
        if (store is null)
            Directory.Delete(workshop["content"], recursive: true);
        else
            File.AppendAllText(workshop["content/store.yaml"], store);
        Directory.CreateDirectory(workshop["themes"]);
        Directory.Move(workshop["theme"], workshop["themes/riffle"]);
        var program = Path.Combine(AppContext.BaseDirectory, "caresheets.dll");
        var start = new System.Diagnostics.ProcessStartInfo("dotnet", ["exec", program, "water", .. arguments])
        {
            WorkingDirectory = workshop.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = System.Diagnostics.Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, text, errors.GetAwaiter().GetResult());
    }
}
