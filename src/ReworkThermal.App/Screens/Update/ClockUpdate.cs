using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The bench clock: keys and time. One key starts and stops a touch; <see cref="TouchCourse"/> takes it into the record.</summary>
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

        IReadOnlyList<ToolSetting> tools = ToolUpdate.Tools(state.Clock, state.Plan.Form);
        if (tools.Count == 0)
        {
            return new Step(state).Complain(ScreenClockWords.NoTool);
        }

        TouchStart start = new(state.Clock.Purpose, tools, [pad], ClockSettings.AddedFor(state, state.Clock.Purpose), FormReading.Side(state.Plan.Form));
        BenchState next = state with
        {
            Clock = state.Clock.Next(pad, new TouchStage.Running(state.Now, start, Entry: null, FlowedAt: null, Rung: 0)),
            Place = Place.Clock,
        };
        return new Step(next)
            .Record(new JobEvent.TouchStarted(start), new RecordedFor(RecordedForKind.TouchStart, next.Clock.Turn))
            .Do(new Errand.BeginRun(next.Clock.Turn, new TouchSetup(job, start, job.Plan?.What.Stop, state.Plan.Form, state.Now)));
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
            'i' => EntryOpening.Open(state, new EntryFor.Tool(ToolField.Iron)),
            'a' => EntryOpening.Open(state, new EntryFor.Tool(ToolField.Air)),
            'b' => EntryOpening.Open(state, new EntryFor.Tool(ToolField.Preheat)),
            'k' when open is not null => EntryOpening.Open(state, new EntryFor.TouchSeconds(open)),
            'd' when open is not null => EntryOpening.Open(state, new EntryFor.DropReason(open)),
            _ => new Step(state),
        };
    }
}
