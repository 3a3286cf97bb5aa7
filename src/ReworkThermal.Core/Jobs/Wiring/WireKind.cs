using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>A kind of jumper wire.</summary>
/// <param name="Name">Name for reports.</param>
/// <param name="Insulated">Whether it has insulation at all.</param>
/// <param name="Rating">Temperature the insulation bears for long, or null for bare wire.</param>
/// <param name="Wall">Thickness of the insulation; zero for bare wire.</param>
/// <param name="RelativePermittivity">Of the insulation; 1 for bare wire.</param>
/// <param name="Emissivity">Of the surface, 0 to 1.</param>
/// <param name="StripsAt">Solder temperature at which the insulation comes off by itself, or null when it is stripped by hand or bare.</param>
public sealed record WireKind(
    string Name,
    bool Insulated,
    Estimate<Temperature>? Rating,
    Estimate<Length> Wall,
    Estimate<double> RelativePermittivity,
    Estimate<double> Emissivity,
    Estimate<Temperature>? StripsAt);
