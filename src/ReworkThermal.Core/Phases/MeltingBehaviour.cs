using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Phases;

/// <summary>How an alloy melts when it is heated slowly enough to stay in equilibrium.</summary>
/// <param name="Composition">The alloy.</param>
/// <param name="Solidus">Temperature at which the first liquid appears.</param>
/// <param name="Liquidus">Temperature at which the last solid is gone.</param>
/// <param name="Flow">Temperature at which 97 % of the mass is liquid: a few percent of solid particles do not stop a joint from moving.</param>
/// <param name="Uncertainty">Half-width of the range in which each of these temperatures is expected; without supercooling.</param>
/// <param name="SolidusRise">How much higher than that the solidus may lie, where a field of one solid ends close by; at most up to the flow temperature.</param>
/// <param name="Curve">Liquid share, enthalpy and phases against temperature.</param>
/// <param name="LatentHeat">Heat taken up when the solid present at the solidus melts completely at that temperature.</param>
/// <param name="Caveats">What to know about this answer, one sentence each; may be empty.</param>
public sealed record MeltingBehaviour(
    MassFractions Composition,
    Temperature Solidus,
    Temperature Liquidus,
    Temperature Flow,
    TemperatureDelta Uncertainty,
    TemperatureDelta SolidusRise,
    MeltCurve Curve,
    SpecificEnergy LatentHeat,
    IReadOnlyList<string> Caveats)
{
    /// <summary>Share of the mass that is liquid at the flow temperature.</summary>
    public const double FlowLiquidFraction = 0.97;

    /// <summary>Liquidus minus solidus.</summary>
    public TemperatureDelta PastyRange => Liquidus - Solidus;
}
