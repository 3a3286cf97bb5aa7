using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>What came of simulating one touch.</summary>
public abstract record TouchSimulation
{
    private TouchSimulation()
    {
    }

    /// <summary>The touch was simulated.</summary>
    /// <param name="Pad">The hotter of the two pad-to-laminate interfaces, from the beginning of the touch into the cooling after it.</param>
    /// <param name="ColdestSolder">The coldest solder of the joint over the same time.</param>
    /// <param name="BoardAtEnd">The board away from the joint when the tool came off.</param>
    /// <param name="Flow">Flow temperature of the solder.</param>
    /// <param name="TimeToFlow">Time until all solder was at its flow temperature; null if never.</param>
    /// <param name="Melted">Whether any of the solder reached its flow temperature: then the pad has had a melt.</param>
    /// <param name="Warnings">Parts near the joint that come past their limits, one sentence each.</param>
    /// <param name="Tools">The tools, and what was assumed about them.</param>
    /// <param name="Notes">What the simulation rests on, one sentence each.</param>
    public sealed record Completed(
        TemperatureHistory Pad,
        TemperatureHistory ColdestSolder,
        Temperature BoardAtEnd,
        Temperature Flow,
        Duration? TimeToFlow,
        bool Melted,
        IReadOnlyList<string> Warnings,
        TouchTools Tools,
        IReadOnlyList<string> Notes) : TouchSimulation;

    /// <summary>It could not be.</summary>
    /// <param name="Reason">One clause.</param>
    public sealed record Failed(string Reason) : TouchSimulation;
}
