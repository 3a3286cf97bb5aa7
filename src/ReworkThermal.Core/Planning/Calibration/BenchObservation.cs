using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Touches;

namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>Something that was seen on the bench during one touch that began on a cooled board, or on one settled over the preheater.</summary>
/// <param name="Bench">Joint and bench as a request states them; its own calibration is not used.</param>
/// <param name="Setting">How the tools were set.</param>
/// <param name="Solder">How the solder on the joint melts.</param>
/// <param name="MassFactor">Mass of solder on the joint over the mass that fills its geometry [1].</param>
/// <param name="Seen">What was seen.</param>
public sealed record BenchObservation(PlanRequest Bench, ToolSetting Setting, MeltingBehaviour Solder, double MassFactor, Sighting Seen);
