using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Tools;

/// <summary>A heater for the underside of the board.</summary>
public sealed record Preheater
{
    /// <summary>Name for reports.</summary>
    public required string Name { get; init; }

    /// <summary>How it works.</summary>
    public required PreheaterKind Kind { get; init; }

    /// <summary>One side of the heated area.</summary>
    public required Length Width { get; init; }

    /// <summary>The other side of the heated area.</summary>
    public required Length Depth { get; init; }

    /// <summary>Distance between heater face and board; zero for a plate the board lies on.</summary>
    public required Length Gap { get; init; }

    /// <summary>Highest temperature of plate, air or emitter face.</summary>
    public required Temperature MostSetting { get; init; }

    /// <summary>Coefficient between heater and board: contact for a plate, convection for air; null for an emitter.</summary>
    public required Estimate<HeatTransferCoefficient>? Coefficient { get; init; }

    /// <summary>Emissivity of the emitter's face; null for plate and air.</summary>
    public required Estimate<double>? FaceEmissivity { get; init; }

    /// <summary>Fastest heating of the board that is allowed.</summary>
    public required Estimate<TemperatureChangeRate> RampLimit { get; init; }
}
