using ReworkThermal.Core.Damage;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>One way of soldering the end of a wire to its pad.</summary>
/// <param name="Tools">Tools and settings.</param>
/// <param name="TimeToFlow">Time until all solder on the pad was at its flow temperature.</param>
/// <param name="Dwell">That, and time to set the wire.</param>
/// <param name="PadPeak">Highest temperature between pad and laminate.</param>
/// <param name="Cost">The budget before and after it.</param>
/// <param name="Warnings">Parts near the pad that come past their limits, one sentence each.</param>
public sealed record WireTouch(
    IReadOnlyList<Jobs.ToolSetting> Tools,
    Duration TimeToFlow,
    Duration Dwell,
    Temperature PadPeak,
    TouchCost Cost,
    IReadOnlyList<string> Warnings);
