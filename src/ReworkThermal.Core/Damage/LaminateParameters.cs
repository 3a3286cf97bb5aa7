using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>Figures of the delamination sum that do not depend on the class of laminate.</summary>
/// <param name="ActivationEnergy">Apparent activation energy of delamination [J/mol].</param>
/// <param name="AnchorTemperature">Temperature of the T260 test [°C], at which the class's time holds.</param>
/// <param name="ExtrapolatedAbove">Interface temperature [°C] above which one-step kinetics is extrapolated and doubtful.</param>
/// <param name="InterfaceError">Error of the interface temperature [K] at which the sensitivity of the sum is shown.</param>
public sealed record LaminateParameters(
    RatedEstimate<MolarEnergy> ActivationEnergy,
    Temperature AnchorTemperature,
    RatedEstimate<Temperature> ExtrapolatedAbove,
    RatedEstimate<TemperatureDelta> InterfaceError);
