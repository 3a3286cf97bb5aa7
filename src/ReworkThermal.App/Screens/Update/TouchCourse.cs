using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The way of a touch from the simulation into the record, as simulation and store answer.</summary>
internal static class TouchCourse
{
    internal static Step Begun(BenchState state, Message.RunBegun begun) => new(begun.Turn != state.Clock.Turn
        ? state
        : state with { Clock = state.Clock with { Forecast = begun.Forecast, NoSimulation = begun.Reason } });

    internal static Step Read(BenchState state, Message.RunRead read)
    {
        ClockState clock = state.Clock;
        bool late = read.Turn != clock.Turn || (clock.Readings.Count > 0 && read.Reading.Seconds <= clock.Readings[^1].Seconds);
        return new Step(late ? state : state with { Clock = clock with { Readings = clock.Readings.Add(read.Reading) } });
    }

    /// <summary>The simulation handed over what it knows of a finished touch: now the touch goes into the record.</summary>
    internal static Step Logged(BenchState state, Message.RunReleased released)
    {
        if (released.Turn != state.Clock.Turn || state.Clock.Stage is not TouchStage.Released stage)
        {
            return new Step(state);
        }

        TouchStage.Running touch = stage.Touch;
        if (touch.Entry is null)
        {
            // The exposure must name the start that it ends, and the store has not numbered it yet.
            return new Step(ClockUpdate.With(state, stage with { Handed = released }));
        }

        Exposure exposure = FinishedTouch.Of(
            touch.Start, touch.Since.Wall, Duration.FromSeconds(stage.Length.TotalSeconds), released.Release, touch.FlowedAt is not null, stage.Note);
        Step step = new Step(ClockUpdate.With(state, stage with { Handed = null })).Record(new JobEvent.ExposureLogged(exposure, touch.Entry), new RecordedFor(RecordedForKind.TouchEnd, state.Clock.Turn));
        return touch.FlowedAt is { } flowed ? TouchAnswers.Timed(step, touch, flowed) : step;
    }

    /// <summary>An interrupted touch whose length is known now goes the way of every other: simulated, then into the record.</summary>
    internal static Step Complete(BenchState state, Logged<TouchStart> touch, TimeSpan length)
    {
        if (state.Job is not { } job)
        {
            return new Step(state);
        }

        TouchStage.Running running = new(
            new Moment(state.Now.Steady - length, touch.At), touch.What, touch.Number, FlowedAt: null, Rung: 2);
        ClockState clock = state.Clock.Next(touch.What.Pads[0], new TouchStage.Released(running, length, ScreenClockWords.CompletedLater));
        return new Step(state with { Entry = null, Clock = clock })
            .Do(new Errand.BeginRun(clock.Turn, new TouchSetup(job, touch.What, Stop: null, state.Plan.Form, running.Since)))
            .Do(new Errand.ReleaseRun(clock.Turn, length));
    }

    /// <summary>The store kept something that the clock may wait for. That a plan is in the job is said now, not before: its tools are set now.</summary>
    internal static Step Kept(BenchState state, JobEntry entry, RecordedFor purpose)
    {
        if (entry.What is JobEvent.PlanAccepted accepted)
        {
            return new Step(state with { Clock = ClockSettings.WithPlan(state.Clock, accepted.Plan) }).Say(ScreenPlanWords.Accepted);
        }

        BenchState next = With(state, entry, purpose);
        return next.Clock.Stage is TouchStage.Released { Touch.Entry: not null, Handed: { } handed } ? Logged(next, handed) : new Step(next);
    }

    /// <summary>The start of a touch could not be kept, so there is no touch.</summary>
    internal static BenchState Aborted(BenchState state) => ClockUpdate.With(state, new TouchStage.Ready());

    private static BenchState With(BenchState state, JobEntry entry, RecordedFor purpose)
    {
        ClockState clock = state.Clock;
        return purpose.Turn != clock.Turn ? state : (purpose.Kind, clock.Stage) switch
        {
            (RecordedForKind.TouchStart, TouchStage.Running running) => ClockUpdate.With(state, running with { Entry = entry.Number }),
            (RecordedForKind.TouchStart, TouchStage.Released released) => ClockUpdate.With(state, released with { Touch = released.Touch with { Entry = entry.Number } }),
            (RecordedForKind.TouchEnd, TouchStage.Released released) => ClockUpdate.With(
                state with { Clock = clock with { Adds = clock.Adds && released.Touch.Start.Added is null } },
                new TouchStage.Cooling(
                    released.Touch,
                    released.Length,
                    new Moment(released.Touch.Since.Steady + released.Length, released.Touch.Since.Wall + released.Length),
                    AsksFlow: released.Note is null && released.Touch.FlowedAt is null && released.Touch.Start.Purpose != TouchPurpose.Preheat)),
            _ => state,
        };
    }
}
