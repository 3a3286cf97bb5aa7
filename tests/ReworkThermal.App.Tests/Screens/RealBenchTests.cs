using System.Text.Json;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;
using Terminal.Gui.Input;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>The screens over the real engines. Physics is checked elsewhere; here only that screens and commands say the same.</summary>
public sealed class RealBenchTests
{
    [Fact]
    public void The_screen_and_the_budget_command_give_the_same_share()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Must("job", "prior", "scorched", "--pad", "2");
        bench.Touch("1", 245, 8);
        bench.Must("touch", "log", "--pad", "3", "--purpose", "mix", "--iron", "heavy", "--iron-set", "380", "--seconds", "4");
        JsonElement[] pads = [.. bench.Json("budget", "show").GetProperty("pads").EnumerateArray()];
        using SqliteJobStore store = SqliteJobStore.Open(bench.Store);
        using ScreenHarness screen = new(120, 40, store, real: true);
        screen.Keys(Key.Enter).Until(() => screen.State.Budgets.Count == pads.Length);
        foreach (JsonElement pad in pads)
        {
            // The command rounds to six places.
            JsonElement share = pad.GetProperty("budget_share");
            PadBudget.Known known = Assert.IsType<PadBudget.Known>(screen.State.Budgets[new PadId(pad.GetProperty("pad").GetString()!)]);
            Assert.Equal(share.GetProperty("central").GetDouble(), known.Central, 6);
            Assert.Equal(share.GetProperty("high").GetDouble(), known.High, 6);
        }
    }

    [Fact]
    public void A_plan_on_the_screen_is_for_the_chosen_pad_and_refuses_one_that_is_spent()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        for (int i = 0; i < 5; i++)
        {
            bench.Touch("2", 290, 8, FormattableString.Invariant($"2026-03-01T09:{10 + i}:00Z"));
        }

        using SqliteJobStore store = SqliteJobStore.Open(bench.Store);
        using ScreenHarness screen = new(120, 40, store, real: true);
        screen.Keys(Key.Enter).Until(() => screen.State.Job is { } job && screen.State.Budgets.Count == job.Pads.Count).Keys(Key.Enter).Settle().Keys(Key.D3);
        Assert.Contains("for pad", screen.Screen, StringComparison.Ordinal);
        Assert.Equal("2", screen.State.Plan.Form[PlanField.Pad]);
        screen.Keys(Key.R).Until(() => screen.State.Plan.Report is not null);
        Assert.Contains("bring the pad's heat budget from", screen.State.Plan.Report!.NoPlanReason, StringComparison.Ordinal);
        screen.Keys(Key.V).Keys([.. Enumerable.Repeat(Key.CursorDown, (int)PlanField.Pad)]).Keys(Key.CursorRight);
        Assert.Equal("3", screen.State.Plan.Form[PlanField.Pad]);
    }

    [Fact]
    public void What_the_clock_says_at_the_release_is_what_the_pad_has_after_it()
    {
        using ScreenHarness screen = new(120, 40, real: true);
        Demo(screen);
        screen.Keys(Key.Space).Settle().Until(() => screen.State.Clock.Forecast is not null);
        screen.Wait(3).Until(() => screen.State.Clock.Readings is [.., { Seconds: > 2.99 }]);
        double said = screen.State.Clock.Readings[^1].BudgetNow!.Value;
        screen.Keys(Key.Space).Settle().Until(() => screen.State.Budgets.GetValueOrDefault(new PadId("1")) is PadBudget.Known { Central: var c } && c > screen.State.Clock.Forecast!.BudgetBefore);
        Assert.Equal(said, Assert.IsType<PadBudget.Known>(screen.State.Budgets[new PadId("1")]).Central, 9);
    }

    /// <summary>The same questions at the screen and at the shell; null for what nobody says.</summary>
    [Theory]
    [InlineData(null, null, null)]
    [InlineData("tinned", null, null)]
    [InlineData("flooded", null, null)]
    [InlineData(null, "top", null)]
    [InlineData(null, null, 15.0)]
    public void A_touch_at_the_screen_and_the_same_touch_at_the_shell_give_the_pad_the_same(string? contact, string? side, double? distanceMm)
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        JobId id = Stored(bench.Store)[0].Id;
        using (SqliteJobStore store = SqliteJobStore.Open(bench.Store))
        {
            using ScreenHarness screen = new(120, 40, store, real: true);
            screen.Keys(Key.Enter).Until(() => screen.State.Job is { } job && screen.State.Budgets.Count == job.Pads.Count).Keys(Key.Enter).Settle().Keys(Key.D3);
            Fill(screen, PlanField.Contact, contact);
            Fill(screen, PlanField.Side, side);
            Fill(screen, PlanField.AirMillimetres, distanceMm?.ToString(System.Globalization.CultureInfo.InvariantCulture));
            screen.Keys(Key.D4, Key.U).Keys(distanceMm is null ? Key.I : Key.A).Fill(distanceMm is null ? "350 heavy" : "380 20 round-6");
            screen.Keys(Key.Space).Settle().Until(() => screen.State.Clock.Forecast is not null);
            Assert.Equal(contact is null && distanceMm is null || side is null, screen.State.Clock.Forecast!.Assumed!.Count > 0);
            screen.Wait(4).Until(() => screen.State.Clock.Readings is [.., { Seconds: > 3.99 }]);
            screen.Keys(Key.Space).Settle().Until(() => screen.State.Job!.Exposures.Count == 1);
        }

        string[] tool = distanceMm is null
            ? ["--iron", "heavy", "--iron-set", "350", .. contact is null ? (string[])[] : ["--contact", contact]]
            : ["--air", "round-6", "--air-set", "380", "--air-flow", "20", "--air-distance", FormattableString.Invariant($"{distanceMm}")];
        bench.Must(["touch", "log", "--pad", "1", "--purpose", "wick", "--seconds", "4", .. tool, .. side is null ? (string[])[] : ["--side", side]]);
        Exposure[] touches = [.. Stored(bench.Store).Single(s => s.Id == id).Exposures.Select(e => e.What)];
        Assert.Equal(touches[0].Tools, touches[1].Tools);
        Assert.Equal(touches[0].Side, touches[1].Side);
        Assert.True(touches[0].Side is not null && touches[0].Tools.All(t => t is ToolSetting.Iron { Contact: not null } or ToolSetting.HotAir { Distance: not null }));
        Assert.Equal(touches[0].Pads[0].Melted, touches[1].Pads[0].Melted);

        // The live run takes the same steps in other lengths; both are held to the solver's tolerance.
        Assert.Equal(touches[0].Pads[0].Series!.History.PeakCelsius, touches[1].Pads[0].Series!.History.PeakCelsius, 1.5);
    }

    [Fact]
    public void A_touch_soon_after_another_starts_on_the_heat_that_is_left()
    {
        using ScreenHarness screen = new(120, 40, real: true);
        Demo(screen);
        Touch(screen, 3);
        Assert.Null(screen.State.Clock.Forecast!.WarmStartC);
        double end = screen.State.Clock.Readings[^1].PadC;
        screen.Wait(5).Keys(Key.Space).Settle().Until(() => screen.State.Clock.Forecast is not null);
        double same = screen.State.Clock.Forecast!.WarmStartC!.Value;
        Assert.InRange(same, 24, end);
        Assert.False(screen.State.Clock.Forecast.Fresh);
        Assert.Contains("begins at", screen.Screen, StringComparison.Ordinal);
        screen.Wait(3).Keys(Key.Space).Settle().Until("TOOL OFF").Until(() => screen.State.Clock.CoolDown is not null);

        // The pad beside it starts on a warm board too, but on less heat than the pad that was under the tip.
        screen.Wait(5).Keys(Key.CursorDown, Key.Space).Settle().Until(() => screen.State.Clock.Forecast is not null);
        double beside = screen.State.Clock.Forecast!.WarmStartC!.Value;
        Assert.InRange(beside, 24, same + 10);
    }

    [Fact]
    public void A_joint_that_did_not_flow_teaches_the_next_plan()
    {
        using ScreenHarness screen = new(120, 40, real: true);
        Demo(screen);
        Touch(screen, 8);
        screen.Keys(Key.N).Settle().Until("Learned from 1 timed touch on this board");
        string kept = File.ReadAllText(Path.Combine(screen.Folder.Path, "calibrations", "six-layer-controller.toml"));
        Assert.Contains("not_flowed_within = \"8 s\"", kept, StringComparison.Ordinal);
        Assert.Contains("[learned]", kept, StringComparison.Ordinal);
        screen.Keys(Key.D3, Key.R).Until("learned from 1 timed touch").Keys(Key.Esc).Until(() => screen.State.Plan.Sampling is null);

        // Voided, it is forgotten.
        screen.Keys(Key.D5, Key.Home, Key.V).Fill("looked at the wrong pad").Until("forgotten by the next plan");
        Assert.False(File.Exists(Path.Combine(screen.Folder.Path, "calibrations", "six-layer-controller.toml")));
    }

    private static void Fill(ScreenHarness screen, PlanField field, string? text)
    {
        if (text is not null)
        {
            screen.Keys([.. Enumerable.Repeat(Key.CursorDown, (int)field - screen.State.Plan.Row)]).Keys(Key.Enter).Fill(text).Settle();
            Assert.Equal(text, screen.State.Plan.Form[field]);
        }
    }

    private static List<JobState> Stored(string path)
    {
        using SqliteJobStore store = SqliteJobStore.Open(path);
        return [.. store.List().Select(h => JobState.Replay(h.Id, store.Read(h.Id)))];
    }

    private static void Demo(ScreenHarness screen) => screen.WithRealJob("1 2").Keys(Key.D4, Key.I).Fill("350 heavy");

    private static void Touch(ScreenHarness screen, double seconds)
    {
        screen.Keys(Key.Space).Settle().Until(() => screen.State.Clock.Forecast is not null);
        screen.Wait(seconds).Until(() => screen.State.Clock.Readings is [.., { Seconds: var s }] && s > seconds - 0.01);
        screen.Keys(Key.Space).Settle().Until("Did it flow?").Until(() => screen.State.Clock.CoolDown is not null);
    }
}
