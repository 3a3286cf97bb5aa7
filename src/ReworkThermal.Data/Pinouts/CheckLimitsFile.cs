using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Pinouts;

/// <summary>Reads the limits of electrical checks from <c>profiles/limits/electrical-checks.toml</c>.</summary>
public static class CheckLimitsFile
{
    /// <summary>Reads the limits.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    public static CheckLimits Load(string path)
    {
        FieldReader root = FieldReader.Open(path);
        CheckLimits limits = new(
            root.Estimate("continuity_at_most", UnitTable.Resistances, ElectricResistance.Zero),
            root.Estimate("isolation_at_least", UnitTable.Resistances, ElectricResistance.Zero));
        root.Finish();
        return limits.ContinuityAtMost.Central < limits.IsolationAtLeast.Central
            ? limits
            : throw root.Wrong("isolation_at_least", "must be above continuity_at_most");
    }
}
