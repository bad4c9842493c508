namespace CareSheets.Paper.Layout;

/// <summary>What stands together on a card, each piece as what lays it in a width.</summary>
internal sealed record CardSection(CardPlace Place, IReadOnlyList<Func<double, Block>> Pieces);
