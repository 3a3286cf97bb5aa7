using System.Globalization;
using ReworkThermal.Core.Phases;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>Re-runs the project's own fits and checks that the files hold their results.</summary>
public sealed class PhasesFitTests(ITestOutputHelper output)
{
    /// <summary>Room for rounding in the files and for where the minimiser stops, as a share of each parameter's reach.</summary>
    private const double Room = 0.02;

    [Theory]
    [InlineData("Bi-In+In-Sn+Bi-In-Sn")]
    [InlineData("In-Pb")]
    [InlineData("Pb-Sb")]
    public void Fit_RunAgain_GivesTheShippedParameters(string group)
    {
        PhasesFit fit = PhasesFit.Of(PhasesData.Database, group);
        double[] found = fit.Run();
        double[] shipped = fit.Shipped();
        for (int i = 0; i < found.Length; i++)
        {
            PhasesFit.Knob knob = fit.Knobs[i];
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{knob.Name,-34} start {knob.Start,12:0.####}  fitted {found[i],12:0.####}  shipped {shipped[i],12:0.####}"));
        }

        for (int i = 0; i < found.Length; i++)
        {
            Assert.True(Math.Abs(found[i] - shipped[i]) <= Room * fit.Knobs[i].Reach, $"{fit.Knobs[i].Name}: fitted {found[i]}, shipped {shipped[i]}");
        }
    }

    [Fact]
    public void FittedPoints_Recomputed_HaveTheResidualsWrittenInTheFiles()
    {
        IReadOnlyList<FitComparison> rows = FitChecks.Recompute(PhasesData.Database);
        foreach (FitComparison row in rows)
        {
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{row.System.Title,-9} {row.Point.Solid,-14} {row.Point.Liquid,-26} {(row.Point.IsBound ? "below" : "at"),-5} {row.Point.Celsius,6:0.0} °C  residual {row.ResidualKelvin,6:0.00} K  weight {row.Point.SigmaKelvin:0.0} K  {row.Point.Provenance.Source}"));
        }

        Assert.True(rows.Count > 30);
        Assert.All(rows, r => Assert.True(r.Unchanged, $"{r.System.Title}: {r.Point.Solid} {r.Point.Liquid}: {r.ResidualKelvin} K, file says {r.Point.ResidualKelvin} K"));
    }
}
