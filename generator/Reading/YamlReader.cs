using System.Globalization;
using CareSheets.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace CareSheets.Reading;

/// <summary>
/// YAML text to a tree of plain nodes. It reads events, never objects: that way duplicate keys,
/// aliases, tags and nesting without end are met before they can do harm.
/// </summary>
internal sealed class YamlReader(SourceFile file, int firstLine, DiagnosticBag bag)
{
    /// <summary>An entry needs four levels; deeper text is an accident or an attack.</summary>
    public const int MostLevels = 10;

    /// <summary>The mapping at the root, or nothing when the text has none that can be used.</summary>
    public YamlMapping? Read(string yaml)
    {
        if (!HasReadableIndents(yaml))
            return null;
        try
        {
            return ReadDocument(new GuardedParser(new Parser(new StringReader(OpenEnds.Shield(yaml)))));
        }
        catch (YamlStop)
        {
            return null; // the bag has its reason
        }
        catch (YamlException failure)
        {
            var mistake = YamlMistake.Of(
                yaml.Split('\n'), (int)failure.Start.Line, (int)failure.Start.Column, Reason(failure));
            bag.Add(ReadingCodes.YamlSyntax, Span(failure.Start, failure.End),
                ("reason", mistake.Reason), ("remedy", mistake.Remedy));
            return null;
        }
    }

    private YamlMapping? ReadDocument(GuardedParser parser)
    {
        parser.Consume<StreamStart>();
        if (!parser.TryConsume<DocumentStart>(out _))
        {
            bag.Add(ReadingCodes.NotAMapping, file.Span(firstLine, 1));
            return null;
        }
        var root = ReadNode(parser, 1);
        parser.Consume<DocumentEnd>();
        if (parser.TryConsume<DocumentStart>(out var second))
            throw Stop(ReadingCodes.SecondDocument, second);
        if (root is YamlMapping mapping)
            return mapping;
        bag.Add(ReadingCodes.NotAMapping, root.Span);
        return null;
    }

    private YamlNode ReadNode(GuardedParser parser, int level)
    {
        var next = parser.Consume<ParsingEvent>();
        if (next is AnchorAlias || next is NodeEvent { Anchor.IsEmpty: false })
            throw Stop(ReadingCodes.Alias, next);
        if (next is NodeEvent { Tag.IsEmpty: false } tagged && tagged.Tag != "?" && tagged.Tag != "!")
            throw Stop(ReadingCodes.Tag, next, ("tag", tagged.Tag.Value));
        if (level > MostLevels && next is not YamlDotNet.Core.Events.Scalar)
            throw Stop(ReadingCodes.TooDeep, next, ("limit", MostLevels.ToString(CultureInfo.InvariantCulture)));
        return next switch
        {
            Scalar scalar => ReadScalar(scalar),
            MappingStart => ReadMapping(parser, next, level),
            SequenceStart => ReadSequence(parser, next, level),
            _ => throw Stop(ReadingCodes.NotAMapping, next),
        };
    }

    private YamlScalar ReadScalar(Scalar scalar)
    {
        var isPlain = scalar.Style == ScalarStyle.Plain;
        for (var line = scalar.Start.Line + 1; isPlain && line <= scalar.End.Line; line++)
        {
            var (number, text) = ((int)line + firstLine - 1, file.Line((int)line + firstLine - 1) ?? "");
            var column = text.Length - text.TrimStart().Length;
            if (text.AsSpan(column).StartsWith("- ", StringComparison.Ordinal))
                bag.Add(ReadingCodes.HyphenInside, file.Span(number, column + 1));
        }
        return new YamlScalar(OpenEnds.Unshield(scalar.Value), isPlain, Span(scalar.Start, scalar.End))
        {
            Lines = scalar.Style is ScalarStyle.Folded or ScalarStyle.Literal
                ? BlockLines.Of(file, (int)scalar.Start.Line + firstLine - 1) : null,
        };
    }

    private YamlMapping ReadMapping(GuardedParser parser, ParsingEvent start, int level)
    {
        var fields = new Dictionary<string, YamlField>();
        while (parser.Current is not MappingEnd)
        {
            if (parser.Current is not Scalar)
                throw Stop(ReadingCodes.ComplexKey, parser.Current!);
            var key = (YamlScalar)ReadNode(parser, level + 1);
            var field = new YamlField(key, ReadNode(parser, level + 1));
            if (!fields.TryAdd(key.Text, field))
                AddDuplicate(key, fields[key.Text].Key);
        }
        return new YamlMapping([.. fields.Values], Span(start.Start, parser.Consume<MappingEnd>().End));
    }

    private YamlSequence ReadSequence(GuardedParser parser, ParsingEvent start, int level)
    {
        var items = new List<YamlNode>();
        while (parser.Current is not SequenceEnd)
            items.Add(ReadNode(parser, level + 1));
        return new YamlSequence(items, Span(start.Start, parser.Consume<SequenceEnd>().End));
    }

    private void AddDuplicate(YamlScalar key, YamlScalar first) =>
        bag.Add(Diagnostic.Of(ReadingCodes.DuplicateKey, key.Span, ("key", key.Text))
            .With([new RelatedSpan(first.Span, "first here")]));

    /// <summary>The parser reports a tab at the wrong place and takes other spaces for letters.</summary>
    private bool HasReadableIndents(string yaml)
    {
        var good = true;
        var lines = yaml.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            var column = lines[i].AsSpan().IndexOfAnyExcept(' ');
            if (column < 0)
                continue;
            var c = lines[i][column];
            if (c != '\t' && (c == ' ' || !char.IsWhiteSpace(c)))
                continue;
            good = false;
            bag.Add(c == '\t' ? ReadingCodes.TabIndent : ReadingCodes.OddSpace,
                file.Span(firstLine + i, column + 1),
                ("code", ((int)c).ToString("X4", CultureInfo.InvariantCulture)));
        }
        return good;
    }

    private YamlStop Stop(DiagnosticCode code, ParsingEvent at, params (string, string)[] values)
    {
        bag.Add(code, Span(at.Start, at.End), values);
        return new YamlStop();
    }

    /// <summary>YamlDotNet counts lines and columns from 1, ends one past: as we do.</summary>
    private SourceSpan Span(Mark start, Mark end)
    {
        var from = new SourcePosition((int)start.Line + firstLine - 1, (int)start.Column);
        var to = new SourcePosition((int)end.Line + firstLine - 1, (int)end.Column);
        return new SourceSpan(file.Path, from, to > from ? to : from.Right(1));
    }

    /// <summary>The outer message is generic, the inner one tells the reason.</summary>
    private static string Reason(YamlException failure) =>
        (failure.InnerException?.Message ?? failure.Message).TrimEnd('.').ReplaceLineEndings(" ");

    private sealed class YamlStop : Exception;
}
