using ReworkThermal.App.Rendering;
using ReworkThermal.App.Rendering.Charts;

namespace ReworkThermal.App.Tests.Snapshots;

/// <summary>How answers look has not changed.</summary>
public sealed class ViewSnapshots
{
    [Fact]
    public void Melt_text() => Snapshot.Matches("melt.txt", Text(new MeltView(SampleReports.Melt)));

    [Fact]
    public void Melt_json() => Snapshot.Matches("melt.json", JsonText.Of(new MeltView(SampleReports.Melt)));

    [Fact]
    public void Melt_not_converged_text() => Snapshot.Matches("melt-not-converged.txt", Text(new MeltView(SampleReports.MeltNotConverged)));

    [Fact]
    public void Melt_not_converged_json() => Snapshot.Matches("melt-not-converged.json", JsonText.Of(new MeltView(SampleReports.MeltNotConverged)));

    [Fact]
    public void Heat_text() => Snapshot.Matches("heat.txt", Text(new HeatView(SampleReports.Heat)));

    [Fact]
    public void Heat_json() => Snapshot.Matches("heat.json", JsonText.Of(new HeatView(SampleReports.Heat)));

    [Fact]
    public void Heat_csv() => Snapshot.Matches("heat.csv", new HeatView(SampleReports.Heat).ToCsv());

    [Fact]
    public void Heat_chart() => Snapshot.Matches("heat.svg", SvgCanvas.Draw(new HeatView(SampleReports.Heat).ToChart()));

    [Fact]
    public void Plan_text() => Snapshot.Matches("plan.txt", Text(new PlanView(SampleReports.Plan)));

    [Fact]
    public void Plan_json() => Snapshot.Matches("plan.json", JsonText.Of(new PlanView(SampleReports.Plan)));

    [Fact]
    public void No_plan_text() => Snapshot.Matches("no-plan.txt", Text(new PlanView(SampleReports.NoPlan)));

    private static string Text(IRenderedReport report)
    {
        using StringWriter text = new();
        report.WriteText(new Page(text, 100, useColour: false));
        return text.ToString();
    }
}
