using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>One touch of a plan: settings, how long, and what it does, with central values of everything uncertain.</summary>
/// <param name="Setting">How the tools are set.</param>
/// <param name="Board">Board temperature before the touch.</param>
/// <param name="TimeToFlow">Time until the solder flows: its coldest part has flow temperature, 97 % liquid, without superheat.</param>
/// <param name="Dwell">Time until the coldest solder has its superheat too, and working time: how long the touch should last.</param>
/// <param name="Stop">When to stop at the latest, whether it has flowed or not; not below <paramref name="Dwell"/>.</param>
/// <param name="StopReason">What sets <paramref name="Stop"/>.</param>
/// <param name="PadPeak">Highest temperature between pad and laminate at the end of the dwell.</param>
/// <param name="LaminateShare">Share of the laminate's time to delamination that one such touch uses, cooling included [1].</param>
public sealed record TouchPlan(
    ToolSetting Setting,
    Temperature Board,
    Duration TimeToFlow,
    Duration Dwell,
    Duration Stop,
    StopReason StopReason,
    Temperature PadPeak,
    double LaminateShare)
{
    /// <summary>The part near the joint that sets <see cref="Stop"/>; null when something else does.</summary>
    public Neighbour? StopPart { get; init; }

    /// <summary>Time until the solder can be worked over the time there is for it, the stop time less the working time [1]: what is left to 1 is there for a slower bench.</summary>
    /// <param name="working">Working time, part of the dwell.</param>
    internal double TightnessWith(Duration working) => Stop > working ? (Dwell - working) / (Stop - working) : 1;
}
