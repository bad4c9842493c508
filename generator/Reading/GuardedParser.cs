using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace CareSheets.Reading;

/// <summary>
/// A YAML parser whose every failure is a YamlException. YamlDotNet 18.1 leaves its scanner in an
/// invalid state on a bracket that is never closed, and throws that instead of a reason.
/// </summary>
internal sealed class GuardedParser(IParser inner) : IParser
{
    public ParsingEvent? Current => inner.Current;

    public bool MoveNext()
    {
        var last = inner.Current;
        try
        {
            return inner.MoveNext();
        }
        catch (InvalidOperationException)
        {
            var (start, end) = last is null ? (Mark.Empty, Mark.Empty) : (last.Start, last.End);
            throw new YamlException(start, end, "A bracket, brace or quote before or after this is not closed");
        }
    }
}
