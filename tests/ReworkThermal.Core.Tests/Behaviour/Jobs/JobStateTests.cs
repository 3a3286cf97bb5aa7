using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Wiring;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Behaviour.Jobs;

public sealed class JobStateTests
{
    [Fact]
    public void A_voided_touch_stops_counting_and_stays_readable()
    {
        JobHistory history = JobHistory.WithSixPins();
        int first = history.Add(JobHistory.Touch(5, [JobHistory.Pad(2)]));
        _ = history.Add(JobHistory.Touch(7, [JobHistory.Pad(2), JobHistory.Pad(3)]));
        Assert.Equal(2, history.State.Pads[JobHistory.Pad(2)].Heats.Count);
        _ = history.Add(new JobEvent.EntryVoided(first, "wrong pad"));
        JobState state = history.State;
        Assert.Equal(7, Assert.Single(state.Pads[JobHistory.Pad(2)].Heats).Touch.Dwell.Seconds);
        _ = Assert.Single(state.Exposures);
        Assert.Equal("wrong pad", state.Voided[first].Reason);
        Assert.Equal(5, ((JobEvent.ExposureLogged)state.Voided[first].Entry.What).Exposure.Dwell.Seconds);
        Assert.Equal(5, state.Entries.Count);
        Assert.Equal(2, state.AsOf(4).Pads[JobHistory.Pad(2)].Heats.Count);
    }

    [Fact]
    public void Heats_are_in_the_order_they_began_however_they_were_logged()
    {
        JobHistory history = JobHistory.WithSixPins();
        _ = history.Add(JobHistory.Touch(1, [JobHistory.Pad(2)], startS: 500));
        _ = history.Add(JobHistory.Touch(2, [JobHistory.Pad(2)], startS: 100));
        Assert.Equal([2.0, 1.0], history.State.Pads[JobHistory.Pad(2)].Heats.Select(h => h.Touch.Dwell.Seconds));
    }

    [Fact]
    public void A_started_touch_stays_open_until_it_is_logged_or_dropped()
    {
        JobHistory history = JobHistory.WithSixPins();
        JobEvent.TouchStarted start = new(new TouchStart(TouchPurpose.Mix, [new ToolSetting.Iron(null, Temperature.FromDegreesCelsius(340))], [JobHistory.Pad(2)]));
        int first = history.Add(start);
        int second = history.Add(start);
        Assert.Equal(first, Assert.IsType<NextStep.SettleTouch>(NextStep.Of(history.State)).Touch.Number);
        Assert.Contains("still open", history.Refuse(new JobEvent.JobClosed(null)), StringComparison.Ordinal);
        int logged = history.Add(JobHistory.Touch(5, [JobHistory.Pad(2)], ends: first));
        _ = history.Add(new JobEvent.TouchDropped(second, "tip was cold"));
        Assert.Empty(history.State.OpenTouches);
        Assert.Contains("no touch that is still open", history.Refuse(JobHistory.Touch(5, [JobHistory.Pad(2)], ends: first)), StringComparison.Ordinal);
        _ = history.Add(new JobEvent.EntryVoided(logged, "wrong seconds"));
        Assert.Empty(history.State.OpenTouches);
    }

    [Fact]
    public void What_was_seen_before_the_first_touch_is_how_the_pad_arrived()
    {
        JobHistory history = JobHistory.WithSixPins();
        _ = history.Add(new JobEvent.PadStateSeen(JobHistory.Pad(2), PadState.Sound, null));
        _ = history.Add(JobHistory.Touch(5, [JobHistory.Pad(2)]));
        _ = history.Add(new JobEvent.PadStateSeen(JobHistory.Pad(2), PadState.Loose, null));
        PadLedger pad = history.State.Pads[JobHistory.Pad(2)];
        Assert.Equal(PadState.Sound, pad.AsArrived);
        Assert.Equal(PadState.Loose, pad.State);
    }

    [Fact]
    public void A_wire_makes_its_pin_wired_and_voiding_it_takes_that_back()
    {
        JobHistory history = JobHistory.WithSixPins();
        _ = history.Add(new JobEvent.PadRegistered(new PadId("TP1"), "landing pad"));
        _ = history.Add(new JobEvent.PadStateSeen(JobHistory.Pad(4), PadState.Missing, null));
        int wire = history.Add(new JobEvent.WireRun(new JumperWire(JobHistory.Pad(4), new PadId("TP1"), new WireGauge(30), Length.FromMillimeters(14), null), null));
        Assert.Equal(PadState.Wired, history.State.Pads[JobHistory.Pad(4)].State);
        Assert.Null(history.State.Pads[new PadId("TP1")].State);
        _ = history.Add(new JobEvent.EntryVoided(wire, "came off"));
        Assert.Equal(PadState.Missing, history.State.Pads[JobHistory.Pad(4)].State);
    }

    [Fact]
    public void Prior_heat_of_all_pads_also_holds_for_pads_entered_later_and_gives_way_to_a_stated_one()
    {
        JobHistory history = JobHistory.WithSixPins();
        _ = history.Add(new JobEvent.PriorHeatStated([], PriorCondition.Touched, null));
        _ = history.Add(new JobEvent.PadRegistered(new PadId("TP1"), "landing pad"));
        _ = history.Add(new JobEvent.PriorHeatStated([JobHistory.Pad(2)], PriorCondition.Scorched, null));
        JobState state = history.State;
        Assert.Equal(PriorCondition.Touched, state.Pads[new PadId("TP1")].Prior);
        Assert.Equal(PriorCondition.Scorched, state.Pads[JobHistory.Pad(2)].Prior);
    }

    [Fact]
    public void A_failed_check_leads_back_to_its_pins_and_a_repair_makes_only_their_checks_stale()
    {
        JobHistory history = JobHistory.WithSixPins();
        _ = history.Add(new JobEvent.CheckDone(new ElectricalCheck.Isolation(JobHistory.Pad(3), JobHistory.Pad(2)), CheckResult.Fail, null, "bridge"));
        Assert.Equal([JobHistory.Pad(2), JobHistory.Pad(3)], Assert.IsType<NextStep.RepairPins>(NextStep.Of(history.State)).Pads);
        _ = history.Add(JobHistory.Touch(3, [JobHistory.Pad(3)]));
        Assert.Equal(0, history.State.Checks.Failed);
        Assert.Equal(1, history.State.Checks.Stale);
    }

    [Fact]
    public void A_job_leads_from_registering_to_closing()
    {
        JobHistory history = new();
        _ = Assert.IsType<NextStep.RegisterPins>(NextStep.Of(history.State));
        history = JobHistory.WithSixPins();
        Assert.Equal(6, Assert.IsType<NextStep.LookAtPads>(NextStep.Of(history.State)).Pads.Count);
        for (int i = 1; i <= 6; i++)
        {
            _ = history.Add(new JobEvent.PadStateSeen(JobHistory.Pad(i), PadState.Sound, null));
        }

        _ = Assert.IsType<NextStep.ChoosePlan>(NextStep.Of(history.State));
        _ = history.Add(new JobEvent.PlanAccepted(new AcceptedPlan(null, null, Temperature.FromDegreesCelsius(340), null, null, null, Duration.FromSeconds(5), Duration.FromSeconds(8), 2, "plain")));
        _ = Assert.IsType<NextStep.Work>(NextStep.Of(history.State));
        _ = history.Add(JobHistory.Touch(5, [.. Enumerable.Range(1, 6).Select(JobHistory.Pad)], TouchPurpose.Refill));
        while (NextStep.Of(history.State) is NextStep.Probe probe)
        {
            _ = history.Add(new JobEvent.CheckDone(probe.Line.Check, CheckResult.Pass, null, null));
        }

        _ = Assert.IsType<NextStep.Close>(NextStep.Of(history.State));
        _ = history.Add(new JobEvent.JobClosed(null));
        _ = Assert.IsType<NextStep.None>(NextStep.Of(history.State));
        Assert.Contains("reopen", history.Refuse(new JobEvent.CautionsShown()), StringComparison.Ordinal);
    }
}
