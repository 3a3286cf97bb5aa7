using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Triage;

/// <summary>Bench time that goes with touches, wires and checks. Start reading this folder here: a survey turns it, a plan and the state of each pad into a forecast.</summary>
/// <param name="SetUp">Once per job.</param>
/// <param name="Handling">Per touch besides the dwell.</param>
/// <param name="Cooling">Per touch until the next may start.</param>
/// <param name="Wire">Per jumper wire.</param>
/// <param name="Check">Per pin, for the checks afterwards.</param>
public sealed record BenchEffort(
    Estimate<Duration> SetUp,
    Estimate<Duration> Handling,
    Estimate<Duration> Cooling,
    Estimate<Duration> Wire,
    Estimate<Duration> Check);
