using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Figures of a wire at its task.</summary>
/// <param name="ResistanceAt20C">Resistance at 20 °C.</param>
/// <param name="VoltageDrop">Voltage lost at the warm end of the estimate (at ambient when the wire does not settle).</param>
/// <param name="DropShare">The same as a share of the supply, or null when there is none.</param>
/// <param name="Power">Heat made at the warm end.</param>
/// <param name="Warming">Range of the temperature rise.</param>
/// <param name="PreeceFusing">Steady fusing current: a bound, no rating.</param>
/// <param name="OnderdonkFusing1s">Fusing current for one second: a bound, no rating.</param>
/// <param name="Inductance">Of the straight wire, or null when it is too short for the formula.</param>
/// <param name="Fitness">Whether the wire fits.</param>
/// <param name="StripAwayFromPad">Whether the insulation comes off only in hot solder, which must be done away from the pad.</param>
public sealed record WireReport(
    ElectricResistance ResistanceAt20C,
    ElectricPotential VoltageDrop,
    double? DropShare,
    Power Power,
    WireWarming Warming,
    ElectricCurrent PreeceFusing,
    ElectricCurrent OnderdonkFusing1s,
    ElectricInductance? Inductance,
    WireFitness Fitness,
    bool StripAwayFromPad);
