using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Triage;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>Triage by the first plan of the demo request (invented figures).</summary>
public class TriageTests
{
    private static readonly Plan _plan = PlanDemo.Planned.Plans[0];

    [Fact]
    public void The_forecast_of_the_requests_own_pad_is_that_of_the_plan()
    {
        PadForecast pad = Survey(Pad("1", PadState.Sound)).Pads[0];
        Assert.Equal(_plan.Before.Band, pad.Before);
        Assert.Equal(_plan.After.Band, pad.After);
        Assert.Equal(_plan.After.WorstBand, pad.AtWorst);
        Assert.Equal(_plan.Passes + 1, pad.Touches);
    }

    [Fact]
    public void A_missing_pad_needs_a_wire_for_certain_and_has_no_band()
    {
        JobForecast forecast = Survey(Pad("1", PadState.Missing), Pad("2", PadState.Missing) with { IsConnected = false });
        Assert.Equal(1, forecast.Wires(WireNeed.Certain));
        Assert.All(forecast.Pads, p => Assert.Null(p.After));
    }

    [Fact]
    public void A_loose_pad_may_need_a_wire_and_a_wired_one_needs_no_other()
    {
        JobForecast forecast = Survey(Pad("1", PadState.Loose), Pad("2", PadState.Wired));
        Assert.Equal(WireNeed.Possible, forecast.Pads[0].Wire);
        Assert.Equal(WireNeed.No, forecast.Pads[1].Wire);
    }

    [Fact]
    public void More_earlier_heat_never_ends_in_a_lower_band()
    {
        IReadOnlyList<PriorHeat> priors = PlanDemo.Workshop.Limits.Priors;
        JobForecast forecast = Survey([.. priors.Select((p, i) => Pad($"{i + 1}", PadState.Sound) with { Prior = p })]);
        DamageBand[] bands = [.. forecast.Pads.Select(p => p.After!.Value)];
        Assert.Equal(["sound", "touched", "scorched"], priors.Select(p => p.Name));
        Assert.Equal(bands.Order(), bands);
    }

    [Fact]
    public void Every_pad_and_every_possible_wire_costs_time()
    {
        JobForecast one = Survey(Pad("1", PadState.Sound));
        JobForecast two = Survey(Pad("1", PadState.Sound), Pad("2", PadState.Sound));
        JobForecast gone = Survey(Pad("1", PadState.Missing), Pad("2", PadState.Sound));
        Assert.True(one.Least < one.Likely && one.Likely < one.Most);
        Assert.True(one.Likely < two.Likely);
        Assert.True(two.Least < gone.Least);
        Assert.Equal(two.Touches, 2 * one.Touches);
    }

    private static JobForecast Survey(params IReadOnlyList<PadSituation> pads) =>
        new TriageSurvey(PlanDemo.Workshop.Limits, Shelf.Alloys.Properties, PlanDemo.Workshop.Effort).Of(PlanDemo.Request, _plan, pads);

    private static PadSituation Pad(string name, PadState state) => new(new PadId(name), state, PlanDemo.Request.Prior, true);
}
