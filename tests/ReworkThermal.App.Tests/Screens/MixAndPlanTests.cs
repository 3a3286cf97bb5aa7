using ReworkThermal.App.Screens.Desks;
using ReworkThermal.Core.Jobs;
using Terminal.Gui.Input;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>The mix and the plan.</summary>
public sealed class MixAndPlanTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_mix_follows_the_slider_keys(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.WithJob().Keys(Key.D2).Until("185.0 °C ±3");
        screen.Keys(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorRight).Until("184.0 °C ±3");
        screen.Keys(Key.PageUp).Until("179.0 °C ±3");
        Assert.Contains("5.0 mg into 10.0 mg", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("clean after 4 passes", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("liquid %", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.K).Settle();
        Assert.Contains("41 % Bi58Sn42", screen.Stored.Notes.Single().What.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("120", "outside what is possible: 0 to 90 %")]
    [InlineData("much", "is no number")]
    public void A_wrong_share_is_refused_beside_the_field(string text, string complaint)
    {
        using ScreenHarness screen = new(120, 40);
        screen.WithJob().Keys(Key.D2, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.Enter, Key.Backspace, Key.Backspace).Type(text).Keys(Key.Enter);
        Assert.Contains(complaint, screen.Screen, StringComparison.Ordinal);
        Assert.Equal(35, screen.State.Mix.Question.SharePercent);
    }

    [Fact]
    public void The_engine_behind_the_mix_is_the_phase_engine()
    {
        // Bi58Sn42 is a eutectic: solidus, liquidus and the last liquid of 90 % of it in itself are one temperature, 138 to 139 °C
        // (Massalski, Binary Alloy Phase Diagrams, 2nd ed., Bi-Sn: 139 °C; from memory).
        using ScreenHarness screen = new(real: true);
        screen.Keys(Key.D2).Keys(Key.CursorDown, Key.CursorDown, Key.Enter, Key.U.WithCtrl).Type("Bi58Sn42").Keys(Key.Enter).Until(() => screen.State.Mix.AnsweredTurn == screen.State.Mix.Turn);
        MixFigures figures = Assert.IsType<MixAnswer.Reckoned>(screen.State.Mix.Answer).Figures;
        Assert.InRange(figures.SolidusC, 136, 141);
        Assert.InRange(figures.FlowC, 136, 143);
    }

    [Fact]
    public void A_joint_that_does_not_fit_its_board_gives_no_amounts_and_the_mix_says_so()
    {
        using ScreenHarness screen = new(120, 40, real: true);
        screen.Keys(Key.D2, Key.Enter, Key.U.WithCtrl).Type("jack-anchor-two-layer").Keys(Key.Enter).Until(() => screen.State.Mix.AnsweredTurn == screen.State.Mix.Turn);
        Assert.NotEqual("two-layer-sensor", screen.State.Mix.Question.Board);
        MixFigures figures = Assert.IsType<MixAnswer.Reckoned>(screen.State.Mix.Answer).Figures;
        Assert.Null(figures.JointMg);
        Assert.Contains(figures.Remarks, r => r.Contains("jack-anchor-two-layer", StringComparison.Ordinal));
    }

    [Fact]
    public void Typing_goes_on_while_a_plan_runs_and_Escape_breaks_it_off()
    {
        using ScreenHarness screen = new();
        screen.Engines.PlanGate.Reset();
        screen.WithJob().Keys(Key.D3, Key.R).Until("40 %  invented work");
        screen.Keys(Key.D1, Key.N).Fill("written meanwhile");
        Assert.Equal("written meanwhile", screen.Stored.Notes.Single().What.Text);
        screen.Keys(Key.D3, Key.Esc).Until("Broken off");
        Assert.Null(screen.State.Plan.Report);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Ranked_plans_show_first_and_their_spread_when_it_is_known(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.Engines.SamplingGate.Reset();
        screen.WithJob().Keys(Key.D3, Key.R).Until("Why, learned from 2 timed touches, sampling benches 30 %");
        Assert.DoesNotContain("P50", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.CursorDown, Key.K).Settle();
        Assert.Equal("Bi58Sn42", screen.Stored.Plan!.What.Alloy);
        screen.Engines.SamplingGate.Set();
        screen.Until("P10 2.1 s, P50 3.2 s, P90 over 9 s");
        Assert.Contains("in time 75 %", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("invented input, 60 % of the spread", screen.Screen, StringComparison.Ordinal);
        Assert.Equal(1, screen.State.Plan.Chosen);
    }

    [Fact]
    public void Sampling_is_broken_off_and_the_plans_stay()
    {
        using ScreenHarness screen = new();
        screen.Engines.SamplingGate.Reset();
        screen.WithJob().Keys(Key.D3, Key.R).Until("sampling benches 30 %").Keys(Key.Esc).Until("Sampling broken off");
        Assert.Contains("smallest budget", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.Esc);
        Assert.Contains("What the plan is for", screen.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_plan_is_chosen_and_kept_in_the_job(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.WithJob().Keys(Key.D3, Key.R).Until("smallest budget");
        screen.Keys(Key.CursorDown, Key.K).Settle();
        AcceptedPlan plan = screen.Stored.Plan!.What;
        Assert.Equal("Bi58Sn42", plan.Alloy);
        Assert.Equal(300, plan.IronSet!.Value.DegreesCelsius, 6);
        Assert.Equal((4, 6, 3), (plan.Dwell.Seconds, plan.Stop.Seconds, plan.Passes));
        screen.Keys(Key.D4);
        Assert.Contains("300 °C heavy", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("dwell 4.0 s   stop 6.0 s", screen.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refused_field_is_marked_beside_its_line()
    {
        using ScreenHarness screen = new(120, 40);
        screen.WithJob().Keys(Key.D3, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorRight, Key.R).Until("! invented refusal");
        screen.Keys(Key.CursorLeft);
        Assert.DoesNotContain("invented refusal", screen.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_request_that_is_not_in_order_is_not_run()
    {
        using ScreenHarness screen = new(120, 40);
        screen.WithJob().Keys(Key.D3);
        while (screen.State.Plan.Row < (int)App.Screens.State.PlanField.WireMillimetres)
        {
            screen.Keys(Key.CursorDown);
        }

        screen.Keys(Key.Enter, Key.Home, Key.Delete, Key.Delete, Key.Delete).Type("-2").Keys(Key.Enter);
        Assert.Contains("outside what is possible: 0.2 to 3 mm", screen.Screen, StringComparison.Ordinal);
        Assert.Equal(0, screen.Engines.PlansAsked);
        Assert.Equal("0.8", screen.State.Plan.Form[App.Screens.State.PlanField.WireMillimetres]);
    }

    [Fact]
    public void Board_and_joint_of_the_request_are_those_of_the_job()
    {
        using ScreenHarness screen = new();
        screen.WithJob().Keys(Key.D3, Key.CursorLeft).Settle();
        Assert.Equal("two-layer", screen.Stored.Brief.Board);
    }
}
