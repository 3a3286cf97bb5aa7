using System.Globalization;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tools;
using UnitsNet;
using Xunit.Abstractions;
using static ReworkThermal.Core.Tests.HeatFlowBench;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>
/// Every case of tests/reference/thermal.csv that a one-dimensional layered or an axisymmetric solver can pose, within the tolerance
/// of its row. The values are exact solutions of textbook problems (the source stands in each row) or agreed between two programs.
/// </summary>
public sealed class HeatFlowBenchmarkTests(ITestOutputHelper output)
{
    /// <summary>Planar two-dimensional cases: an axisymmetric solver cannot pose them.</summary>
    private static readonly string[] _notPosed = ["TB35", "TB37"];

    private static readonly Dictionary<string, Func<double[]>> _cases = HeatFlowPosedSlabs.Cases
        .Concat(HeatFlowPosedRings.Cases)
        .Concat(HeatFlowPosedMelting.Cases)
        .Append(new("TB46", PlatedHole))
        .Append(new("TB47", () =>
        [
            RoundJet.MeanNusselt(5000, 0.69, 2, 2.5),
            RoundJet.MeanNusselt(5000, 0.69, 2, 5),
            RoundJet.MeanNusselt(20000, 0.69, 2, 2.5),
            RoundJet.MeanNusselt(20000, 0.69, 2, 5),
        ]))
        .Append(new("TB48", () =>
        [
            ViewFactor.CoaxialDiscs(0.5, 0.5, 1),
            ViewFactor.CoaxialDiscs(40, 40, 20),
            ViewFactor.AlignedRectangles(1, 1, 1),
            ViewFactor.AlignedRectangles(120, 120, 20),
        ]))
        .ToDictionary(p => p.Key, p => p.Value, StringComparer.Ordinal);

    public static TheoryData<string> Names => [.. _cases.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Posed_case_reproduces_its_rows(string name)
    {
        List<Row> rows = [.. Rows().Where(r => r.Case == name)];
        double[] computed = _cases[name]();

        Assert.Equal(rows.Count, computed.Length);
        output.WriteLine($"{name}: {rows[0].Source}");
        for (int i = 0; i < rows.Count; i++)
        {
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"  {rows[i].Quantity,-34} {rows[i].Place,-34} published {rows[i].Value,12:G8} computed {computed[i],12:G8} off {computed[i] - rows[i].Value,10:G3} allowed {rows[i].Tolerance:G3}"));
        }

        for (int i = 0; i < rows.Count; i++)
        {
            Assert.InRange(computed[i], rows[i].Value - rows[i].Tolerance, rows[i].Value + rows[i].Tolerance);
        }
    }

    [Fact]
    public void Every_case_of_the_table_is_posed_or_listed_as_not_posed()
    {
        IEnumerable<string> missing = Rows().Select(r => r.Case).Distinct().Except(_cases.Keys).Except(_notPosed);

        Assert.Empty(missing);
        output.WriteLine("not posed (planar, two-dimensional): " + string.Join(", ", _notPosed));
    }

    private static double[] PlatedHole()
    {
        HeatRun run = Run(HeatFlowPlatedHole.Problem(5), new SolverSettings { Refinement = 2, StepTolerance = TemperatureDelta.FromKelvins(0.05) });
        return [.. new[] { 0.5, 2, 5 }.SelectMany(t => new[] { run.Probes["solder"].At(t), run.Probes["pad"].At(t), run.Probes["plane"].At(t) })];
    }

    private static IEnumerable<Row> Rows()
    {
        foreach (string line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", "thermal.csv")).Skip(1))
        {
            List<string> cells = Split(line);
            yield return new Row(
                cells[0],
                cells[2],
                cells[3],
                double.Parse(cells[4], CultureInfo.InvariantCulture),
                double.Parse(cells[6], CultureInfo.InvariantCulture),
                cells[7]);
        }
    }

    private static List<string> Split(string line)
    {
        List<string> cells = [];
        bool quoted = false;
        string cell = string.Empty;
        foreach (char c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add(cell);
                cell = string.Empty;
            }
            else
            {
                cell += c;
            }
        }

        cells.Add(cell);
        return cells;
    }

    private sealed record Row(string Case, string Quantity, string Place, double Value, double Tolerance, string Source);
}
