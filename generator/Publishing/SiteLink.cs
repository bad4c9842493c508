namespace CareSheets.Publishing;

/// <summary>Questions about an address found in a written page.</summary>
internal static class SiteLink
{
    /// <summary>
    /// Whether a link within the site reaches a file, and the id behind its # where it names one.
    /// Links into the web are taken on trust: nothing here asks the network.
    /// </summary>
    public static bool Leads(
        string page, string link, IReadOnlySet<string> files, IReadOnlyDictionary<string, IReadOnlySet<string>> ids)
    {
        if (HasScheme(link) || link.StartsWith("//", StringComparison.Ordinal))
            return true;
        var hash = link.IndexOf('#', StringComparison.Ordinal);
        var path = Uri.UnescapeDataString((hash < 0 ? link : link[..hash]).Split('?')[0]);
        var target = path.Length == 0 ? page : Resolve(page, path);
        if (target is null || !files.Contains(target))
            return false;
        return hash < 0 || !ids.TryGetValue(target, out var known) || IsState(link[(hash + 1)..]) ||
            known.Contains(Uri.UnescapeDataString(link[(hash + 1)..]));
    }

    /// <summary>Whether an address means a file of the site itself.</summary>
    public static bool IsRelative(string link) => !HasScheme(link) && !link.StartsWith("//", StringComparison.Ordinal);

    /// <summary>Everything that a page loads must be a relative file or written into the page.</summary>
    public static bool IsFromElsewhere(string target) =>
        target.StartsWith("//", StringComparison.Ordinal) ||
        (HasScheme(target) && !target.StartsWith("data:", StringComparison.OrdinalIgnoreCase));

    /// <summary>
    /// Browsers skip white space and control characters in front of and within a scheme; the
    /// address of a refresh stands behind its number of seconds.
    /// </summary>
    public static bool CouldRunScript(string target)
    {
        if (!target.Contains(':', StringComparison.Ordinal))
            return false;
        var bare = string.Concat(target.Where(c => !char.IsWhiteSpace(c) && !char.IsControl(c))).ToLowerInvariant();
        var refresh = bare.IndexOf("url=", StringComparison.Ordinal);
        return Runs(bare) || (refresh >= 0 && Runs(bare[(refresh + "url=".Length)..]));
    }

    /// <summary>What a script of the page reads, such as <c>species=danio-rerio</c>; ids have no = here.</summary>
    private static bool IsState(string fragment) => fragment.Contains('=', StringComparison.Ordinal);

    private static bool Runs(string bare) =>
        bare.StartsWith("javascript:", StringComparison.Ordinal) ||
        bare.StartsWith("vbscript:", StringComparison.Ordinal) ||
        bare.StartsWith("data:text", StringComparison.Ordinal);

    private static bool HasScheme(string link)
    {
        var colon = link.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && link.AsSpan(0, colon).IndexOfAny('/', '#', '?') < 0;
    }

    /// <summary>The file that a relative link means, or nothing when it leaves the site.</summary>
    private static string? Resolve(string page, string path)
    {
        if (path.StartsWith('/'))
            return null; // the root of a server or a disk is not the root of the site
        var parts = new List<string>(page.Split('/')[..^1]);
        foreach (var part in path.Split('/'))
        {
            if (part == ".." && parts.Count == 0)
                return null;
            if (part == "..")
                parts.RemoveAt(parts.Count - 1);
            else if (part is not ("." or ""))
                parts.Add(part);
        }
        return string.Join('/', parts);
    }
}
