using System.Diagnostics;

namespace CareSheets.Commands;

/// <summary>Prints a page of this machine as PDF with a browser that runs unseen and then ends.</summary>
internal sealed class PdfPrinter(string browser)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private static readonly string[] Flags =
    [
        "--headless", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync", "--disable-extensions", "--no-pdf-header-footer",
    ];

    /// <summary>What went wrong, or nothing.</summary>
    public string? Print(string page, string pdf)
    {
        var profile = Directory.CreateTempSubdirectory("caresheets-browser-").FullName;
        try
        {
            File.Delete(pdf);
            return Run(new ProcessStartInfo(browser, Arguments(page, pdf, profile))
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                UseShellExecute = false,
            }) ?? (File.Exists(pdf) ? null : $"{browser} wrote no PDF.");
        }
        catch (Exception failure) when (failure is System.ComponentModel.Win32Exception or IOException)
        {
            return $"{browser} can't be run: {failure.Message}";
        }
        finally
        {
            Remove(profile);
        }
    }

    /// <summary>
    /// The sandbox is left out for root alone, for whom Chromium does not start with it; what is printed
    /// was written by this program and holds no script.
    /// </summary>
    private static string[] Arguments(string page, string pdf, string profile) =>
    [
        .. Flags, .. Environment.UserName == "root" ? ["--no-sandbox"] : Array.Empty<string>(),
        $"--user-data-dir={profile}", $"--print-to-pdf={Path.GetFullPath(pdf)}",
        new Uri(Path.GetFullPath(page)).AbsoluteUri,
    ];

    private static string? Run(ProcessStartInfo start)
    {
        using var process = Process.Start(start)!;
        var (text, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            return $"{start.FileName} did not end within {Patience.TotalMinutes} minutes.";
        }
        Task.WaitAll(text, errors);
        return process.ExitCode == 0 ? null : $"{start.FileName} ended with {process.ExitCode}: {errors.Result.Trim()}";
    }

    /// <summary>A browser that is still putting its files away may hold one for a moment: let them be.</summary>
    private static void Remove(string profile)
    {
        try
        {
            Directory.Delete(profile, recursive: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
        }
    }
}
