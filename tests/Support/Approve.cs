namespace CareSheets.Tests.Support;

/// <summary>
/// Compares a text with an approved file. A difference leaves a file .received beside it; with
/// APPROVE=1 in the environment the approved file is written anew instead.
/// </summary>
internal static class Approve
{
    public static void Text(string actual, string approvedPath)
    {
        var received = approvedPath + ".received";
        File.Delete(received);
        if (Environment.GetEnvironmentVariable("APPROVE") == "1")
            File.WriteAllText(approvedPath, actual);
        var expected = File.Exists(approvedPath) ? File.ReadAllText(approvedPath) : "(no approved file)";
        if (expected == actual)
            return;
        File.WriteAllText(received, actual);
        Assert.Equal(expected, actual);
    }
}
