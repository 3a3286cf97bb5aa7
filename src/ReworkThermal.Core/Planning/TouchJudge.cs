using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>Reads a touch off a simulated course: when it flows, how long it should last, when it must stop.</summary>
internal static class TouchJudge
{
    /// <summary>Judges a course.</summary>
    /// <param name="course">The simulated touch, at least as long as the longest touch.</param>
    /// <param name="setting">Its tool setting.</param>
    /// <param name="neededC">Temperature the coldest solder must reach [°C].</param>
    /// <param name="limits">Limits.</param>
    /// <param name="longest">Longest touch with this tool.</param>
    /// <param name="laminateAllowed">Share of the laminate's time to delamination that this touch may use [1].</param>
    /// <returns>The touch, or null when it does not flow, and cannot be worked, before it must stop.</returns>
    internal static TouchPlan? Judge(TouchCourse course, ToolSetting setting, double neededC, PlanLimits limits, Duration longest, double laminateAllowed)
    {
        if (course.SecondsUntilColdest(neededC) is not { } flows)
        {
            return null;
        }

        (double stop, StopReason reason) = Stop(course, limits, longest, laminateAllowed);
        double dwell = flows + limits.WorkingTime.Value.Seconds;
        return dwell > stop
            ? null
            : new TouchPlan(
                setting,
                Temperature.FromDegreesCelsius(course.BoardStartC),
                Duration.FromSeconds(flows),
                Duration.FromSeconds(dwell),
                Duration.FromSeconds(stop),
                reason,
                Temperature.FromDegreesCelsius(course.PadAt(dwell)),
                course.LaminateAt(dwell));
    }

    /// <summary>When a touch must end and why.</summary>
    internal static (double Seconds, StopReason Reason) Stop(TouchCourse course, PlanLimits limits, Duration longest, double laminateAllowed)
    {
        (double Seconds, StopReason Reason) stop = (longest.Seconds, StopReason.LongestTouch);
        if (course.SecondsUntilPad(limits.MostPadTemperature.Value.DegreesCelsius) is { } hot && hot < stop.Seconds)
        {
            stop = (hot, StopReason.PadTemperature);
        }

        if (course.SecondsUntilLaminate(laminateAllowed) is { } spent && spent < stop.Seconds)
        {
            stop = (spent, StopReason.HeatBudget);
        }

        return stop;
    }
}
