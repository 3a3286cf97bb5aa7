using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The bench clock: one key starts and stops a touch.</summary>
internal static class ClockUpdate
{
    /// <summary>
    /// Two strokes closer together than this are one: a key or pedal that is held down repeats itself, and terminals begin to repeat
    /// after a quarter to two thirds of a second (common keyboard settings, no source).
    /// </summary>
    internal static readonly TimeSpan LeastBetweenStrokes = TimeSpan.FromMilliseconds(700);

    /// <summary>Longest cooling that is followed after a touch.</summary>
    internal static readonly TimeSpan MostCooling = TimeSpan.FromMinutes(3);

    internal static Step Apply(BenchState state, Press press)
    {
        switch (state.Clock.Stage)
        {
            case TouchStage.Running running when press.Letter == 'f':
                return running.FlowedAt is null
                    ? new Step(With(state, running with { FlowedAt = Since(state, running) })).Say(ScreenClockWords.FlowMarked)
                    : new Step(state);
            case TouchStage.Running or TouchStage.Released:
                return new Step(state).Say(ScreenClockWords.Occupied);
            case TouchStage.Cooling { AsksFlow: true } cooling when press.Letter is 'y' or 'n':
                return TouchAnswers.Answered(state, cooling, press.Letter == 'y');
            default:
                return press.IsStroke ? Stroke(state) : Prepare(state, press);
        }
    }

    /// <summary>The start and stop key, from anywhere while a touch runs.</summary>
    internal static Step Stroke(BenchState state)
    {
        bool held = state.Clock.LastStroke is { } last && state.Now.Steady - last < LeastBetweenStrokes;
        BenchState next = state with { Clock = state.Clock with { LastStroke = state.Now.Steady } };
        return held ? new Step(next).Say(ScreenClockWords.HeldKey)
            : next.Clock.Stage is TouchStage.Running running ? Stop(next, running)
            : Start(next);
    }

    /// <summary>Takes the settings for a job that was just opened from what was done or planned in it.</summary>
    internal static ClockState SetUp(JobState job, ClockState before)
    {
        ClockState clock = new() { Turn = before.Turn + 1 };
        IReadOnlyList<ToolSetting> tools = job.OpenTouches.Count > 0 ? job.OpenTouches[^1].What.Tools
            : job.Exposures.Count > 0 ? job.Exposures[^1].What.Tools : [];
        PadId? pad = job.OpenTouches.Count > 0 ? job.OpenTouches[^1].What.Pads[0]
            : job.Exposures.Count > 0 ? job.Exposures[^1].What.Pads[0].Pad : null;
        clock = clock with { Pad = pad, Adds = job.Exposures is not [.., { What.Added: not null }] };
        return tools.Count > 0 ? tools.Aggregate(clock, ToolUpdate.With) : job.Plan is { } plan ? WithPlan(clock, plan.What) : clock;
    }

    /// <summary>Takes the settings of an accepted plan.</summary>
    internal static ClockState WithPlan(ClockState clock, AcceptedPlan plan) => clock with
    {
        IronCelsius = plan.IronSet is { } iron ? Math.Round(iron.DegreesCelsius, 3) : null,
        AirCelsius = plan.AirSet is { } air ? Math.Round(air.DegreesCelsius, 3) : null,
        AirLitresPerMinute = plan.AirFlow is { } flow ? Math.Round(flow.LitersPerMinute, 3) : null,
        PreheatCelsius = plan.PreheatSet is { } preheat ? Math.Round(preheat.DegreesCelsius, 3) : null,
    };

    /// <summary>Time goes on: bells, and the next reading of the simulation.</summary>
    internal static Step Tick(BenchState state)
    {
        switch (state.Clock.Stage)
        {
            case TouchStage.Running running:
                Step step = Bells(state, running);
                return state.Clock.Forecast is null ? step : step.Do(new Errand.AdvanceRun(state.Clock.Turn, Since(state, running)));
            case TouchStage.Cooling cooling when state.Clock.Forecast is not null && state.Now.Steady - cooling.Off.Steady < MostCooling:
                return new Step(state).Do(new Errand.CoolRun(state.Clock.Turn, state.Now.Steady - cooling.Off.Steady));
            default:
                return new Step(state);
        }
    }

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
        Exposure exposure = FinishedTouch.Of(
            touch.Start, touch.Added, touch.Since.Wall, Duration.FromSeconds(stage.Length.TotalSeconds), released.Release, touch.FlowedAt is not null, stage.Note);
        Step step = new Step(state).Record(new JobEvent.ExposureLogged(exposure, touch.Entry), new RecordedFor(RecordedForKind.TouchEnd, state.Clock.Turn));
        return touch.FlowedAt is { } flowed ? TouchAnswers.Timed(step, touch, flowed) : step;
    }

    /// <summary>An interrupted touch whose length is known now goes the way of every other: simulated, then into the record.</summary>
    internal static Step Complete(BenchState state, Logged<TouchStart> touch, TimeSpan length)
    {
        if (state.Job is not { } job)
        {
            return new Step(state);
        }

        int turn = state.Clock.Turn + 1;
        TouchStage.Running running = new(
            new Moment(state.Now.Steady - length, touch.At), touch.What, AddedFor(state, touch.What.Purpose), touch.Number, FlowedAt: null, Rung: 2);
        ClockState clock = state.Clock with
        {
            Turn = turn,
            Pad = touch.What.Pads[0],
            Forecast = null,
            NoSimulation = null,
            CoolDown = null,
            Readings = [],
            Stage = new TouchStage.Released(running, length, ScreenClockWords.CompletedLater),
        };
        return new Step(state with { Entry = null, Clock = clock })
            .Do(new Errand.BeginRun(turn, new TouchSetup(job, touch.What, running.Added, Stop: null, state.Plan.Form, running.Since)))
            .Do(new Errand.ReleaseRun(turn, length));
    }

    /// <summary>The store kept something that the clock may wait for.</summary>
    internal static BenchState Kept(BenchState state, JobEntry entry, RecordedFor purpose)
    {
        ClockState clock = state.Clock;
        if (entry.What is JobEvent.PlanAccepted accepted)
        {
            return state with { Clock = WithPlan(clock, accepted.Plan) };
        }

        return purpose.Turn != clock.Turn ? state : (purpose.Kind, clock.Stage) switch
        {
            (RecordedForKind.TouchStart, TouchStage.Running running) => With(state, running with { Entry = entry.Number }),
            (RecordedForKind.TouchStart, TouchStage.Released released) => With(state, released with { Touch = released.Touch with { Entry = entry.Number } }),
            (RecordedForKind.TouchEnd, TouchStage.Released released) => With(
                state with { Clock = clock with { Adds = clock.Adds && released.Touch.Added is null } },
                new TouchStage.Cooling(
                    released.Touch,
                    released.Length,
                    new Moment(released.Touch.Since.Steady + released.Length, released.Touch.Since.Wall + released.Length),
                    AsksFlow: released.Note is null && released.Touch.FlowedAt is null && released.Touch.Start.Purpose != TouchPurpose.Preheat)),
            _ => state,
        };
    }

    /// <summary>The start of a touch could not be kept, so there is no touch.</summary>
    internal static BenchState Aborted(BenchState state) => With(state, new TouchStage.Ready());

    /// <summary>Solder that a touch puts in: the alloy of the kept plan when mixing in, the refit alloy when refitting.</summary>
    internal static AddedSolder? AddedFor(BenchState state, TouchPurpose purpose) => purpose switch
    {
        _ when !state.Clock.Adds => null,
        TouchPurpose.Mix when state.Job?.Plan is { What: { Alloy: { } alloy, AddedMass: { } mass } } => new AddedSolder(alloy, mass),
        TouchPurpose.Refill when state.Plan.Form[PlanField.Refill] is { Length: > 0 } refill => new AddedSolder(refill, Mass: null),
        _ => null,
    };

    /// <summary>How long the touch has run.</summary>
    internal static TimeSpan Since(BenchState state, TouchStage.Running running) => state.Now.Steady - running.Since.Steady;

    internal static BenchState With(BenchState state, TouchStage stage) => state with { Clock = state.Clock with { Stage = stage } };

    private static Step Start(BenchState state)
    {
        if (state.Job is not { } job || state.Pad is not { } pad)
        {
            return new Step(state).Complain(state.Job is null ? ScreenWords.OpenJobFirst : ScreenClockWords.NoPad);
        }

        if (job.Status == JobStatus.Closed || job.OpenTouches.Count > 0)
        {
            return new Step(state).Complain(job.Status == JobStatus.Closed ? ScreenWords.JobClosed : ScreenClockWords.SettleFirst);
        }

        IReadOnlyList<ToolSetting> tools = ToolUpdate.Tools(state.Clock);
        if (tools.Count == 0)
        {
            return new Step(state).Complain(ScreenClockWords.NoTool);
        }

        int turn = state.Clock.Turn + 1;
        TouchStart start = new(state.Clock.Purpose, tools, [pad]);
        AddedSolder? added = AddedFor(state, start.Purpose);
        BenchState next = state with
        {
            Clock = state.Clock with
            {
                Turn = turn,
                Pad = pad,
                Forecast = null,
                NoSimulation = null,
                CoolDown = null,
                Readings = [],
                Stage = new TouchStage.Running(state.Now, start, added, Entry: null, FlowedAt: null, Rung: 0),
            },
            Place = Place.Clock,
        };
        return new Step(next)
            .Record(new JobEvent.TouchStarted(start), new RecordedFor(RecordedForKind.TouchStart, turn))
            .Do(new Errand.BeginRun(turn, new TouchSetup(job, start, added, job.Plan?.What.Stop, state.Plan.Form, state.Now)));
    }

    private static Step Stop(BenchState state, TouchStage.Running running)
    {
        TimeSpan length = Since(state, running);
        return new Step(With(state, new TouchStage.Released(running, length)) with { Place = Place.Clock })
            .Do(new Errand.ReleaseRun(state.Clock.Turn, length))
            .Say(ScreenClockWords.Released);
    }

    private static Step Bells(BenchState state, TouchStage.Running running)
    {
        if (state.Job?.Plan is not { What: { } plan })
        {
            return new Step(state);
        }

        double seconds = Since(state, running).TotalSeconds;
        return seconds >= plan.Stop.Seconds && running.Rung < 2 ? new Step(With(state, running with { Rung = 2 })).Do(new Errand.Ring(3))
            : seconds >= plan.Dwell.Seconds && running.Rung < 1 ? new Step(With(state, running with { Rung = 1 })).Do(new Errand.Ring(1))
            : new Step(state);
    }

    private static Step Prepare(BenchState state, Press press)
    {
        ClockState clock = state.Clock;
        List<PadId> pads = [.. state.Pads.Select(p => p.Pad)];
        if (press.Kind is PressKind.Up or PressKind.Down && pads.Count > 0)
        {
            int at = state.Pad is { } pad ? pads.IndexOf(pad) : 0;
            return new Step(state with { Clock = clock with { Pad = pads[(at + (press.Kind == PressKind.Down ? 1 : -1) + pads.Count) % pads.Count], Adds = true } });
        }

        Logged<TouchStart>? open = state.Job?.OpenTouches.Count > 0 ? state.Job.OpenTouches[0] : null;
        return press.Letter switch
        {
            'u' => new Step(state with { Clock = clock with { Purpose = (TouchPurpose)(((int)clock.Purpose + 1) % Enum.GetValues<TouchPurpose>().Length), Adds = true } }),
            's' => new Step(state with { Clock = clock with { Adds = !clock.Adds } }),
            'i' => ToolUpdate.Ask(state, ToolField.Iron),
            'a' => ToolUpdate.Ask(state, ToolField.Air),
            'b' => ToolUpdate.Ask(state, ToolField.Preheat),
            'k' when open is not null => new Step(state with { Entry = TextEntry.Of(new EntryFor.TouchSeconds(open), ScreenClockWords.HowLong) }),
            'd' when open is not null => new Step(state with { Entry = TextEntry.Of(new EntryFor.DropReason(open), ScreenClockWords.WhyDropped) }),
            _ => new Step(state),
        };
    }
}
