using MathNet.Numerics.LinearAlgebra;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>
/// Shares of a spread by linear regression on ranks: with standardised coefficients b and correlations r, the product b r of each input
/// is its share, and the shares sum to R² (Pratt's measure; ranks after Iman and Conover, Technometrics 21 (1979) 499; both from memory).
/// </summary>
internal static class RankRegression
{
    /// <summary>Computes the shares.</summary>
    /// <param name="inputs">Samples by rows, each of the same length.</param>
    /// <param name="outcome">One outcome per row; positive infinity for "never", which ranks last.</param>
    /// <returns>One share per input, not below zero, and R²; all zero when the outcome does not vary.</returns>
    internal static (double[] Shares, double Explained) Shares(IReadOnlyList<double[]> inputs, double[] outcome)
    {
        int variables = inputs.Count > 0 ? inputs[0].Length : 0;
        double[] y = Standardised(Ranks(outcome));
        if (variables == 0 || y.All(v => v == 0))
        {
            return (new double[variables], 0);
        }

        Matrix<double> x = Matrix<double>.Build.Dense(inputs.Count, variables);
        for (int v = 0; v < variables; v++)
        {
            x.SetColumn(v, Standardised(Ranks([.. inputs.Select(row => row[v])])));
        }

        Vector<double> target = Vector<double>.Build.Dense(y);
        Vector<double> correlation = x.TransposeThisAndMultiply(target) / inputs.Count;
        Vector<double> coefficients = x.QR().Solve(target);
        double[] shares = new double[variables];
        for (int v = 0; v < variables; v++)
        {
            // An input without influence gives a small product of either sign.
            shares[v] = Math.Max(0, coefficients[v] * correlation[v]);
        }

        return (shares, shares.Sum());
    }

    /// <summary>Ranks from 1; equal values share their mean rank.</summary>
    internal static double[] Ranks(double[] values)
    {
        int[] order = [.. Enumerable.Range(0, values.Length).OrderBy(i => values[i])];
        double[] ranks = new double[values.Length];
        int start = 0;
        while (start < order.Length)
        {
            int end = start;
            while (end + 1 < order.Length && values[order[end + 1]].Equals(values[order[start]]))
            {
                end++;
            }

            for (int i = start; i <= end; i++)
            {
                ranks[order[i]] = 1 + ((start + end) / 2.0);
            }

            start = end + 1;
        }

        return ranks;
    }

    private static double[] Standardised(double[] values)
    {
        double mean = values.Average();
        double deviation = Math.Sqrt(values.Average(v => (v - mean) * (v - mean)));
        return [.. values.Select(v => deviation > 0 ? (v - mean) / deviation : 0)];
    }
}
