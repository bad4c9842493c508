namespace CareSheets.Regulations;

/// <summary>The rank at which a list names what it means: one species or a whole group.</summary>
public enum RuleRank
{
    Species,
    Genus,
    Family,
    Order,
}
