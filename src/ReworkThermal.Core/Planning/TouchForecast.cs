using ReworkThermal.Core.Damage;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

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
