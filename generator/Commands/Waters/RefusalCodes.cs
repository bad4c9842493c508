using CareSheets.Diagnostics;
using CareSheets.Water;

namespace CareSheets.Commands.Waters;

/// <summary>The message for each reason why a sum has no answer.</summary>
internal static class RefusalCodes
{
    public static DiagnosticCode Of(RefusalReason reason) => reason switch
    {
        RefusalReason.OutsideFormula => WaterCodes.OutsideFormula,
        RefusalReason.BetweenNoWaters => WaterCodes.BetweenNoWaters,
        RefusalReason.SameWaters => WaterCodes.SameWaters,
        RefusalReason.AcidityDoesNotBlend => WaterCodes.AcidityDoesNotBlend,
        RefusalReason.NoSuchWater => WaterCodes.NoSuchWater,
        RefusalReason.OtherIonsDecide => WaterCodes.OtherIonsDecide,
        RefusalReason.ReadingsApart => WaterCodes.ReadingsApart,
        RefusalReason.NothingHappens => WaterCodes.NothingHappens,
        RefusalReason.NeverReached => WaterCodes.NeverReached,
        RefusalReason.NotApproaching => WaterCodes.NotApproaching,
    };
}
