using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>Readings from which a check counts as passed. A person decides; the limits only suggest.</summary>
/// <param name="ContinuityAtMost">Highest resistance of a way that conducts, leads of the meter taken off.</param>
/// <param name="IsolationAtLeast">Lowest resistance of places that do not conduct to each other, on a board with its parts.</param>
public sealed record CheckLimits(Estimate<ElectricResistance> ContinuityAtMost, Estimate<ElectricResistance> IsolationAtLeast)
{
    /// <summary>What a reading suggests.</summary>
    /// <param name="expected">What should be seen.</param>
    /// <param name="reading">What the meter showed.</param>
    /// <returns>Pass or fail.</returns>
    public CheckResult Suggest(ExpectedReading expected, MeterReading reading)
    {
        bool conducts = expected is ExpectedReading.Conducts;
        bool passes = reading switch
        {
            MeterReading.Shown shown when conducts => shown.Resistance <= ContinuityAtMost.Central,
            MeterReading.Shown shown => shown.Resistance >= IsolationAtLeast.Central,
            _ => !conducts,
        };
        return passes ? CheckResult.Pass : CheckResult.Fail;
    }
}
