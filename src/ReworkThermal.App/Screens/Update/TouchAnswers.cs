using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.App.Screens.Update;

/// <summary>What the technician says about a touch after it.</summary>
internal static class TouchAnswers
{
    /// <summary>Did it flow? Both answers are kept as notes: they bound the time to flow, but only the flow key times it.</summary>
    internal static Step Flowed(BenchState state, TouchStage.Cooling cooling, bool flowed)
    {
        Step step = new(ClockUpdate.With(state, cooling with { AsksFlow = false }));
        PadId pad = cooling.Touch.Start.Pads[0];
        return flowed
            ? step.Record(new JobEvent.NoteTaken(ScreenClockWords.FlowedNote(cooling.Length), pad)).Say(ScreenClockWords.FlowKept)
            : step.Record(new JobEvent.NoteTaken(ScreenClockWords.NotFlowedNote(cooling.Length), pad)).Say(ScreenClockWords.NoFlowKept);
    }

    /// <summary>A timed flow as an event.</summary>
    internal static JobEvent Flow(TouchStart start, TimeSpan after) => new JobEvent.MeasurementTaken(
        new TimedMeasurement.Flow(start.Pads[0], start.Tools, BoardAtStart: null, Duration.FromSeconds(after.TotalSeconds)));
}
