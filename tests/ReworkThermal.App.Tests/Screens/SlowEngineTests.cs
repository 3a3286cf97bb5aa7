using ReworkThermal.App.Screens.State;
using Terminal.Gui.Input;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>Keys while the engines are slow: each one stands still until the test lets it go on, so no clock is needed to tell.</summary>
public sealed class SlowEngineTests
{
    [Fact]
    public void No_key_is_lost_while_every_engine_stands_still()
    {
        using ScreenHarness screen = new(120, 40);
        screen.WithJob();
        screen.Engines.Gate.Reset();
        screen.Engines.PlanGate.Reset();
        screen.Keys(Key.D3, Key.R, Key.D2).Until(() => Called(screen, "plan") && Called(screen, "mix"));

        // The slider, the places, a note, pins and a touch: all of it with no answer from any engine.
        double before = screen.State.Mix.Question.SharePercent;
        screen.Keys(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown);
        for (int i = 0; i < 20; i++)
        {
            screen.Keys(Key.CursorRight);
        }

        Assert.Equal(before + 20, screen.State.Mix.Question.SharePercent, 6);
        screen.Keys(Key.D1, Key.N).Type("every letter of this note arrives in its order").Keys(Key.Enter).Settle();
        Assert.Equal("every letter of this note arrives in its order", screen.Stored.Notes.Single().What.Text);
        screen.Keys(Key.D5, Key.W, Key.D4, Key.I).Fill("350 heavy").Keys(Key.Space).Settle().Wait(3).Keys(Key.F).Wait(1);
        Assert.Contains("TOUCH 4.0 s", screen.LastRow, StringComparison.Ordinal);
        Assert.Equal(3, Assert.IsType<TouchStage.Running>(screen.State.Clock.Stage).FlowedAt!.Value.TotalSeconds, 6);
        screen.Keys(Key.Space);
        Assert.IsType<TouchStage.Released>(screen.State.Clock.Stage);

        // Then the engines wake, and the touch is in the record with what was pressed meanwhile.
        screen.Engines.Release();
        screen.Settle().Until("TOOL OFF").Until(() => screen.Stored.Measurements.Count == 1);
        Assert.Equal(4, screen.Stored.Exposures.Single().What.Dwell.Seconds, 6);
    }

    [Fact]
    public void Keys_behind_a_text_that_waits_for_a_slow_store_are_taken_when_it_has_answered()
    {
        using GatedStore store = new();
        using ScreenHarness screen = new(store: store);
        screen.WithJob();
        store.Gate.Reset();
        screen.Keys(Key.N).Type("first").Keys(Key.Enter, Key.N).Type("second").Keys(Key.Enter, Key.D3);
        Assert.Contains("saving ...", screen.Screen, StringComparison.Ordinal);
        Assert.NotEqual(Place.Plan, screen.State.Place);
        store.Gate.Set();
        screen.Until(() => screen.State.Place == Place.Plan);
        Assert.Equal(["first", "second"], screen.Stored.Notes.Select(n => n.What.Text));
    }

    [Fact]
    public void A_plan_is_said_to_be_in_the_job_when_a_slow_store_has_it_and_its_tools_are_set()
    {
        using GatedStore store = new();
        using ScreenHarness screen = new(store: store);
        screen.WithJob().Keys(Key.D3, Key.R).Until("smallest budget").Settle();
        store.Gate.Reset();
        screen.Keys(Key.CursorDown, Key.K);
        Assert.DoesNotContain("The plan is in the job", screen.Screen, StringComparison.Ordinal);
        store.Gate.Set();
        screen.Until("The plan is in the job").Keys(Key.D4, Key.Space).Settle().Until("TOUCH RUNNING");
    }

    [Fact]
    public void A_touch_that_is_over_before_the_store_has_kept_its_start_leaves_nothing_open()
    {
        using GatedStore store = new();
        using ScreenHarness screen = new(store: store);
        screen.WithJob().Keys(Key.D4, Key.I).Fill("350 heavy");
        store.Gate.Reset();
        screen.Keys(Key.Space).Until(() => screen.State.Clock.Forecast is not null).Wait(2).Keys(Key.Space);
        screen.Until(() => screen.State.Clock.Stage is TouchStage.Released { Handed: not null });
        store.Gate.Set();
        screen.Settle().Until("Did it flow?");
        Assert.Empty(screen.Stored.OpenTouches);
        Assert.Equal(2, screen.Stored.Exposures.Single().What.Dwell.Seconds, 6);
    }

    [Fact]
    public void No_engine_runs_on_the_thread_of_the_screens()
    {
        using ScreenHarness screen = new();
        screen.WithJob().Keys(Key.D2).Until("185.0").Keys(Key.D3, Key.R).Until("smallest budget");
        screen.Keys(Key.D4, Key.I).Fill("350 heavy").Keys(Key.Space).Settle().Wait(2).Keys(Key.Space).Settle().Until("Did it flow?").Keys(Key.Y).Settle();
        screen.Keys(Key.D5, Key.W).Until(() => Called(screen, "record") && Called(screen, "lessons"));
        Assert.Equal(["budgets", "lessons", "mix", "plan", "record", "touch"], screen.Engines.Calls.Select(c => c.Engine).Distinct().Order(StringComparer.Ordinal));
        Assert.DoesNotContain(screen.Engines.Calls, c => c.Thread == Environment.CurrentManagedThreadId);
    }

    private static bool Called(ScreenHarness screen, string engine) => screen.Engines.Calls.Any(c => c.Engine == engine);
}
