using ReworkThermal.Core.Damage.Dwelling;
using ReworkThermal.Core.Damage.Pulling;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>What one more touch at given settings would do to a pad.</summary>
/// <param name="Tools">Tools and settings.</param>
/// <param name="Dwell">Length of contact that was considered.</param>
/// <param name="Simulation">The simulated touch.</param>
/// <param name="Cost">The budget before and after it.</param>
/// <param name="Limit">How much of the budget may be used for a dwell to count as safe.</param>
/// <param name="Safe">The longest dwell within that limit.</param>
/// <param name="CoolDown">How long to let the pad cool after the touch.</param>
/// <param name="Pull">What the pad could hold, and whether the part could be lifted, when the tool comes off.</param>
public sealed record TouchForecast(
    IReadOnlyList<Jobs.ToolSetting> Tools,
    Duration Dwell,
    TouchSimulation.Completed Simulation,
    TouchCost Cost,
    DwellLimit Limit,
    SafeDwell Safe,
    CoolDown CoolDown,
    PullCheck Pull);

/// <summary>What came of asking what the next touch would do.</summary>
public abstract record ForecastOutcome
{
    private ForecastOutcome()
    {
    }

    /// <summary>It was computed.</summary>
    /// <param name="Forecast">The answer.</param>
    public sealed record Made(TouchForecast Forecast) : ForecastOutcome;

    /// <summary>It could not be.</summary>
    /// <param name="Reason">One clause.</param>
    public sealed record Failed(string Reason) : ForecastOutcome;
}
