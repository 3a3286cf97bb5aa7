using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.App.Screens.Update;

/// <summary>What the technician says about the flow, during a touch or after it.</summary>
internal static class TouchAnswers
{
    /// <summary>Did it flow? Both answers bound the time to flow; only the flow key times it.</summary>
    internal static Step Answered(BenchState state, TouchStage.Cooling cooling, bool flowed)
    {
        TouchStart start = cooling.Touch.Start;
        Duration within = Duration.FromSeconds(cooling.Length.TotalSeconds);
        Temperature? board = Desks.FinishedTouch.BoardHeld(start.Tools);
        return new Step(ClockUpdate.With(state, cooling with { AsksFlow = false }))
            .Record(
                new JobEvent.MeasurementTaken(flowed
                    ? new TimedMeasurement.FlowedWithin(start.Pads[0], start.Tools, board, within)
                    : new TimedMeasurement.NotFlowed(start.Pads[0], start.Tools, board, within)),
                Purpose(state, cooling.Touch))
            .Say(flowed ? ScreenClockWords.FlowKept : ScreenClockWords.NoFlowKept);
    }

    /// <summary>Hands a timed flow to the record.</summary>
    internal static Step Timed(Step step, TouchStage.Running touch, TimeSpan after) => step.Record(
        new JobEvent.MeasurementTaken(new TimedMeasurement.Flow(
            touch.Start.Pads[0], touch.Start.Tools, Desks.FinishedTouch.BoardHeld(touch.Start.Tools), Duration.FromSeconds(after.TotalSeconds))),
        Purpose(step.State, touch));

    private static RecordedFor Purpose(BenchState state, TouchStage.Running touch) =>
        new(RecordedForKind.Lesson, state.Clock.Turn, LessonUpdate.Of(state, touch));
}
