using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>Reads a touch off a simulated course: when it flows, how long it should last, when it must stop.</summary>
internal static class TouchJudge
{
    /// <summary>Judges a course.</summary>
    /// <param name="course">The simulated touch, at least as long as the longest touch.</param>
    /// <param name="setting">Its tool setting.</param>
    /// <param name="neededC">Temperature the coldest solder must reach to be worked: flow temperature and superheat [°C].</param>
    /// <param name="limits">Limits.</param>
    /// <param name="longest">Longest touch with this tool.</param>
    /// <param name="laminateAllowed">Share of the laminate's time to delamination that this touch may use [1].</param>
    /// <returns>The touch, or null when it does not flow, and cannot be worked, before it must stop, or flows without the iron.</returns>
    internal static TouchPlan? Judge(TouchCourse course, ToolSetting setting, double neededC, PlanLimits limits, Duration longest, double laminateAllowed)
    {
        if (course.SecondsUntilColdest(neededC) is not { } workable || (setting.Assist is not null && workable <= 0))
        {
            // Where the air has melted everything before the iron touches, the iron is no part of it.
            return null;
        }

        double flows = course.SecondsUntilColdest(neededC - limits.Superheat.Value.Kelvins) ?? workable;
        TouchEnd end = Stop(course, limits, longest, laminateAllowed);
        double dwell = workable + limits.WorkingTime.Value.Seconds;
        return dwell > end.Seconds
            ? null
            : new TouchPlan(
                setting,
                Temperature.FromDegreesCelsius(course.BoardStartC),
                Duration.FromSeconds(flows),
                Duration.FromSeconds(dwell),
                Duration.FromSeconds(end.Seconds),
                end.Reason,
                Temperature.FromDegreesCelsius(course.PadAt(dwell)),
                course.LaminateAt(dwell))
            {
                StopPart = end.Part,
            };
    }

    /// <summary>When a touch must end and why; below zero when it must not begin.</summary>
    internal static TouchEnd Stop(TouchCourse course, PlanLimits limits, Duration longest, double laminateAllowed)
    {
        TouchEnd stop = new(longest.Seconds, StopReason.LongestTouch);
        if (course.SecondsUntilPad(limits.MostPadTemperature.Value.DegreesCelsius) is { } hot && hot < stop.Seconds)
        {
            stop = new TouchEnd(hot, StopReason.PadTemperature);
        }

        if (course.SecondsUntilLaminate(laminateAllowed) is { } spent && spent < stop.Seconds)
        {
            stop = new TouchEnd(spent, StopReason.HeatBudget);
        }

        double lag = limits.PartLag.Value.Seconds;
        if (course.FirstPartAtItsLimit() is var (seconds, part) && seconds - lag < stop.Seconds)
        {
            stop = new TouchEnd(seconds - lag, StopReason.Neighbour, part);
        }

        return stop;
    }
}
