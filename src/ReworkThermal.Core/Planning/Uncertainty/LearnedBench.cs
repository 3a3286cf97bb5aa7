using MathNet.Numerics.LinearAlgebra;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>The bench as a calibration knows it.</summary>
internal static class LearnedBench
{
    /// <summary>The most likely bench; the central one without a calibration.</summary>
    internal static BenchVariation Of(PlanRequest request)
    {
        IReadOnlyList<UncertainInput> inputs = InputsOf(request);
        return request.Calibration is { } learned
            ? new BenchVariation(inputs, [.. inputs.Select(i => learned.Deviations[IndexOf(i.Kind)])])
            : new BenchVariation([], []);
    }

    /// <summary>The learnable inputs of a bench, with their ranges.</summary>
    internal static IReadOnlyList<UncertainInput> InputsOf(PlanRequest request)
    {
        ToolSetting iron = new(request.Bench.Irons[0], request.Bench.Irons[0].MostSetting, null);
        return [.. UncertainInputs.Of(request, iron, TemperatureDelta.Zero).Where(i => IndexOf(i.Kind) >= 0).OrderBy(i => IndexOf(i.Kind))];
    }

    /// <summary>Turns independent samples into samples of the calibrated bench: the learnable ones get its centre and its covariance.</summary>
    /// <param name="learned">The calibration; null leaves the samples as they are.</param>
    /// <param name="inputs">The inputs.</param>
    /// <param name="samples">Samples by rows; changed in place.</param>
    internal static void Shift(BenchCalibration? learned, IReadOnlyList<UncertainInput> inputs, double[][] samples)
    {
        if (learned is null)
        {
            return;
        }

        Matrix<double> covariance = Matrix<double>.Build.DenseOfRows(learned.Covariance);
        Matrix<double> root = covariance.Cholesky().Factor;
        int[] place = [.. UncertainInputs.Learnable.Select(k => inputs.ToList().FindIndex(i => i.Kind == k))];
        foreach (double[] row in samples)
        {
            double[] free = [.. place.Select(p => p >= 0 ? row[p] : 0)];
            for (int i = 0; i < place.Length; i++)
            {
                if (place[i] >= 0)
                {
                    double sum = learned.Deviations[i];
                    for (int j = 0; j <= i; j++)
                    {
                        sum += root[i, j] * free[j];
                    }

                    row[place[i]] = sum;
                }
            }
        }
    }

    private static int IndexOf(InputKind kind) => UncertainInputs.Learnable.ToList().IndexOf(kind);
}
