using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;
using Terminal.Gui.Input;
using UnitsNet;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>The bench clock.</summary>
public sealed class ClockTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void One_key_starts_and_stops_a_touch_and_the_record_has_it(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        Ready(screen).Keys(Key.Space).Settle();
        Assert.Contains("TOUCH RUNNING", screen.Screen, StringComparison.Ordinal);
        Assert.Single(screen.Stored.OpenTouches);
        screen.Until(() => screen.State.Clock.Forecast is not null).Wait(3).Until(() => screen.State.Clock.Readings.Count > 0);
        Assert.Contains("TOUCH 3.0 s", screen.LastRow, StringComparison.Ordinal);
        Assert.Contains("flow", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("off now", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.Space).Settle().Until("Did it flow?");
        Exposure touch = screen.Stored.Exposures.Single().What;
        Assert.Equal(3, touch.Dwell.Seconds, 3);
        Assert.Equal(350, Assert.IsType<ToolSetting.Iron>(touch.Tools.Single()).Set.DegreesCelsius, 6);
        Assert.NotNull(touch.Pads.Single().Series);
        Assert.False(touch.Pads.Single().Melted);
        Assert.Empty(screen.Stored.OpenTouches);
    }

    [Fact]
    public void A_pedal_that_is_held_down_does_not_stop_the_touch()
    {
        using ScreenHarness screen = new();
        Ready(screen).Keys(Key.Space).Settle();
        for (int i = 0; i < 20; i++)
        {
            screen.Wait(0.5).Keys(Key.Space);
        }

        Assert.IsType<TouchStage.Running>(screen.State.Clock.Stage);
        screen.Wait(1).Keys(Key.Enter).Settle().Until("Did it flow?");
        Assert.Equal(11, screen.Stored.Exposures.Single().What.Dwell.Seconds, 3);
    }

    [Fact]
    public void The_bell_rings_once_at_the_dwell_and_three_times_at_the_stop()
    {
        using ScreenHarness screen = new();
        Ready(screen).Keys(Key.D3, Key.R).Until("smallest budget").Keys(Key.K).Settle();
        screen.Keys(Key.D4, Key.Space).Settle().Wait(3.9);
        Assert.Equal(0, screen.Rings);
        screen.Wait(0.2);
        Assert.Equal(1, screen.Rings);
        Assert.Contains("DWELL REACHED", screen.Screen, StringComparison.Ordinal);
        screen.Wait(2);
        Assert.Equal(4, screen.Rings);
        Assert.Contains("STOP NOW", screen.Screen, StringComparison.Ordinal);
        screen.Wait(5);
        Assert.Equal(4, screen.Rings);
    }

    [Fact]
    public void The_flow_key_times_the_flow_for_calibration()
    {
        using ScreenHarness screen = new();
        Ready(screen).Keys(Key.Space).Settle().Wait(2.5).Keys(Key.F).Wait(1).Keys(Key.Space).Settle().Until("TOOL OFF");
        TimedMeasurement.Flow flow = Assert.IsType<TimedMeasurement.Flow>(screen.Stored.Measurements.Single().What);
        Assert.Equal(2.5, flow.TimeToFlow.Seconds, 3);
        Assert.True(screen.Stored.Exposures.Single().What.Pads.Single().Melted);
        Assert.DoesNotContain("Did it flow?", screen.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData('y')]
    [InlineData('n')]
    public void The_answer_after_a_touch_bounds_the_time_to_flow_and_teaches(char answer)
    {
        using ScreenHarness screen = new();
        Ready(screen).Keys(Key.Space).Settle().Until(() => screen.State.Clock.Forecast is not null).Wait(2).Keys(Key.Space).Settle();
        screen.Until("Did it flow?").Keys(new Key(answer)).Settle().Until("Learned from 1 timed touch");
        TimedMeasurement kept = screen.Stored.Measurements.Single().What;
        Duration within = answer == 'y' ? Assert.IsType<TimedMeasurement.FlowedWithin>(kept).Within : Assert.IsType<TimedMeasurement.NotFlowed>(kept).Within;
        Assert.Equal(2, within.Seconds, 6);
        Assert.Equal(kept, screen.Engines.Lessons.Single().Measurement);
        screen.Wait(4).Until("off for");
    }

    [Fact]
    public void A_touch_without_a_simulation_is_kept_and_teaches_nothing()
    {
        using ScreenHarness screen = new();
        screen.Engines.Simulates = false;
        Ready(screen).Keys(Key.Space).Settle().Until("clock only").Wait(2).Keys(Key.Space).Settle().Until("Did it flow?").Keys(Key.N).Settle();
        screen.Until("Nothing learned: the touch could not be simulated");
        Assert.Single(screen.Stored.Measurements);
    }

    [Fact]
    public void A_measurement_that_is_voided_is_taken_back()
    {
        using ScreenHarness screen = new(120, 40);
        Ready(screen).Keys(Key.Space).Settle().Wait(2).Keys(Key.Space).Settle().Until("Did it flow?").Keys(Key.Y).Settle();
        screen.Keys(Key.D5, Key.Home, Key.V).Fill("looked at the wrong pad").Until("forgotten by the next plan");
        Assert.Empty(screen.Stored.Measurements);
    }

    [Fact]
    public void What_a_touch_puts_in_is_shown_and_kept_once()
    {
        using ScreenHarness screen = new();
        Ready(screen).Keys(Key.D3, Key.R).Until("smallest budget").Keys(Key.CursorDown, Key.K).Settle().Keys(Key.D4);
        Assert.Contains("adds  5 mg Bi58Sn42", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.Space).Settle().Wait(2).Keys(Key.Space).Settle().Until("TOOL OFF");
        Assert.Equal(new AddedSolder("Bi58Sn42", Mass.FromMilligrams(5)), screen.Stored.Exposures.Single().What.Added);
        Assert.Contains("adds  nothing", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.S);
        Assert.Contains("adds  5 mg Bi58Sn42", screen.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_simulation_there_is_still_a_clock_and_it_says_why()
    {
        using ScreenHarness screen = new();
        screen.Engines.Simulates = false;
        Ready(screen).Keys(Key.Space).Settle().Until("clock only: invented lack").Wait(2).Keys(Key.Space).Settle().Until("TOOL OFF");
        Assert.Equal((null, null), (screen.Stored.Exposures.Single().What.Pads.Single().Series, screen.Stored.Exposures.Single().What.Pads.Single().Melted));
    }

    [Fact]
    public void The_heat_solver_follows_a_touch_and_its_cooling()
    {
        // No figure is checked here but the order of things: the pad warms above the board's start, cools after the release, and the
        // stored series spans the touch.
        using ScreenHarness screen = new(real: true);
        screen.WithRealJob("1").Keys(Key.H.WithShift).Settle();
        screen.Keys(Key.D4, Key.I).Fill("350 heavy").Keys(Key.Space).Settle().Until(() => screen.State.Clock.Forecast is not null);
        screen.Wait(2).Until(() => screen.State.Clock.Readings is [.., { Seconds: > 1.5, BudgetNow: > 0 }]);
        BenchReading hot = screen.State.Clock.Readings[^1];
        Assert.InRange(hot.PadC, 100, 350);
        screen.Keys(Key.Space).Settle().Until(() => screen.State.Clock.CoolDown is not null);
        Assert.Contains("cool", screen.Screen, StringComparison.OrdinalIgnoreCase);
        HeatedPad pad = screen.Stored.Exposures.Single().What.Pads.Single();
        Assert.Equal(2, pad.Series!.History.Seconds[^1], 1);
        Assert.Equal(SeriesOrigin.Simulated, pad.Series.Origin);
        screen.Wait(20).Until(() => screen.State.Clock.Readings[^1].Seconds > 15);
        Assert.True(screen.State.Clock.Readings[^1].PadC < hot.PadC);
    }

    [Fact]
    public void Space_stops_a_touch_from_any_place()
    {
        using ScreenHarness screen = new();
        Ready(screen).Keys(Key.Space).Settle().Wait(1).Keys(Key.D1, new Key('?'), Key.Space).Settle();
        Assert.Single(screen.Stored.Exposures);
        Assert.Equal(Place.Clock, screen.State.Place);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_touch_that_was_cut_short_is_offered_for_completion(int width, int height)
    {
        using InMemoryJobStore store = new();
        using (ScreenHarness killed = new(store: store))
        {
            Ready(killed).Keys(Key.Space).Settle().Wait(2);
        }

        using ScreenHarness screen = new(width, height, store);
        screen.Until("A touch was cut short");
        Assert.Contains("iron 350 °C", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.Space);
        Assert.Contains("Settle the interrupted touch first", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.K).Type("1,5").Keys(Key.Enter);
        Assert.Contains("! '1,5' is no number", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.Backspace, Key.Backspace).Type(".5").Keys(Key.Enter).Until(() => screen.Stored.OpenTouches.Count == 0);
        Assert.Equal(1.5, screen.Stored.Exposures.Single().What.Dwell.Seconds, 6);
        Assert.Equal(screen.Stored.Entries.First(e => e.What is JobEvent.TouchStarted).At, screen.Stored.Exposures.Single().What.StartedAt);
    }

    [Fact]
    public void A_touch_that_was_cut_short_waits_while_a_text_is_typed()
    {
        using InMemoryJobStore store = new();
        using (ScreenHarness killed = new(store: store))
        {
            Ready(killed).Keys(Key.Space).Settle().Wait(2);
        }

        using ScreenHarness screen = new(store: store, early: [Key.N, Key.P]);
        Assert.Equal("p", screen.State.Entry?.Text);
        screen.Keys(Key.Esc, Key.J, Key.Enter).Until("A touch was cut short");
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_plan_with_iron_and_air_reminds_that_the_air_goes_first(int width, int height)
    {
        using InMemoryJobStore store = new();
        using (ScreenHarness before = new(store: store))
        {
            Ready(before);
            AcceptedPlan both = new(null, null, Temperature.FromDegreesCelsius(340), null, Temperature.FromDegreesCelsius(400), VolumeFlow.FromLitersPerMinute(40), Duration.FromSeconds(4), Duration.FromSeconds(9), 1, "invented");
            Assert.IsType<RecordOutcome.Recorded>(new JobDesk(store, TimeProvider.System, new RandomIdSource()).Record(before.State.Job!.Id, new JobEvent.PlanAccepted(both)));
            Assert.DoesNotContain("air first", before.Screen, StringComparison.Ordinal);
        }

        using ScreenHarness screen = new(width, height, store);
        screen.Until("Pump controller").Keys(Key.Enter).Until(() => screen.State.Job is not null).Keys(Key.D4);
        Assert.Contains("air first, then the iron: see 3", screen.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_touch_that_gave_no_heat_is_dropped_with_a_reason()
    {
        using InMemoryJobStore store = new();
        using (ScreenHarness killed = new(store: store))
        {
            Ready(killed).Keys(Key.Space).Settle();
        }

        using ScreenHarness screen = new(store: store);
        screen.Until("A touch was cut short").Keys(Key.D, Key.Enter);
        Assert.Contains("the record needs a reason", screen.Screen, StringComparison.Ordinal);
        screen.Fill("pedal pressed by mistake");
        Assert.Empty(screen.Stored.OpenTouches);
        Assert.Empty(screen.Stored.Exposures);
    }

    [Fact]
    public void A_touch_that_cannot_be_kept_does_not_begin()
    {
        using FailingStore store = new();
        using ScreenHarness screen = new(store: store);
        Ready(screen);
        store.Fails = true;
        screen.Keys(Key.Space).Until("the disk is full");
        Assert.IsType<TouchStage.Ready>(screen.State.Clock.Stage);
        Assert.Contains("NOT SAVED", screen.LastRow, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("9999", "outside what is possible: 100 to 500 °C")]
    [InlineData("hot", "is no number")]
    [InlineData("350 huge", "'huge' is not known; there are: fine, heavy")]
    public void A_wrong_setting_is_refused_beside_the_field(string text, string complaint)
    {
        using ScreenHarness screen = new(120, 40);
        screen.WithJob().Keys(Key.D4, Key.I).Type(text).Keys(Key.Enter);
        Assert.Contains(complaint, screen.Screen, StringComparison.Ordinal);
        Assert.Contains(text, screen.Screen, StringComparison.Ordinal);
        Assert.Null(screen.State.Clock.IronCelsius);
    }

    private static ScreenHarness Ready(ScreenHarness screen) => screen.WithJob().Keys(Key.D4, Key.I).Fill("350 heavy");
}
