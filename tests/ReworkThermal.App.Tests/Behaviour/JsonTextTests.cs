using System.Text.Json;
using ReworkThermal.App.Rendering;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Reports.Plans;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class JsonTextTests
{
    [Fact]
    public void A_share_beyond_all_bounds_is_still_JSON()
    {
        Spread beyond = new(0.1, 4, double.PositiveInfinity);
        PlanReport report = SampleReports.Plan with { Plans = [.. SampleReports.Plan.Plans.Select(p => p with { BudgetNow = beyond })] };
        using JsonDocument json = JsonDocument.Parse(JsonText.Of(new PlanView(report)));
        Assert.Equal(4, json.RootElement.GetProperty("plans")[0].GetProperty("budget_share_now").GetProperty("central").GetDouble());
    }
}
