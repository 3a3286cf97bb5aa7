using UnitsNet;

namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>What a class of laminate tolerates.</summary>
/// <param name="Name">Short name by which a board refers to the class, for example <c>A</c>.</param>
/// <param name="Description">What the class is, in words.</param>
/// <param name="TimeToDelamination">T260: time to delamination at 260 °C by IPC-TM-650 2.4.24.1 [s], above zero.</param>
/// <param name="TimeIsLowerBound">True when the published test stopped before anything happened, so that the time is "at least".</param>
/// <param name="GlassTransition">Tg [°C].</param>
/// <param name="Decomposition">Td, 5 % mass loss by IPC-TM-650 2.4.24.6 [°C].</param>
/// <param name="PeelStrength">Peel strength of standard foil after a 288 °C, 10 s float [N/mm].</param>
/// <param name="ExpansionBelow">Through-thickness expansion below Tg [1/K].</param>
/// <param name="ExpansionAbove">Through-thickness expansion above Tg [1/K].</param>
/// <param name="Notes">What a reader must know about these figures, one sentence each.</param>
public sealed record LaminateLimits(
    string Name,
    string Description,
    RatedEstimate<Duration> TimeToDelamination,
    bool TimeIsLowerBound,
    RatedEstimate<Temperature> GlassTransition,
    RatedEstimate<Temperature> Decomposition,
    RatedEstimate<ForcePerLength> PeelStrength,
    RatedEstimate<CoefficientOfThermalExpansion> ExpansionBelow,
    RatedEstimate<CoefficientOfThermalExpansion> ExpansionAbove,
    IReadOnlyList<string> Notes);
