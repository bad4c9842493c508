using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>Finds the node of a YAML tree that begins at a line and column.</summary>
internal sealed class PlaceIndex
{
    private readonly Dictionary<SourcePosition, YamlNode> _byStart = [];
    private readonly YamlNode _root;

    public PlaceIndex(YamlNode root)
    {
        _root = root;
        Add(root);
    }

    public YamlNode At(int line, int column) =>
        _byStart.GetValueOrDefault(new SourcePosition(line, column), _root);

    /// <summary>A block mapping begins where its first field's name begins: the name is the better place.</summary>
    private void Add(YamlNode node)
    {
        _byStart[node.Span.Start] = node;
        switch (node)
        {
            case YamlMapping mapping:
                foreach (var field in mapping.Fields)
                {
                    Add(field.Key);
                    Add(field.Value);
                }
                break;
            case YamlSequence sequence:
                foreach (var item in sequence.Items)
                    Add(item);
                break;
        }
    }
}
