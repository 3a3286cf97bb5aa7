namespace ReworkThermal.Core.Phases.Solving;

/// <summary>The polynomial and mixing terms of a Gibbs-energy surface, each with exact first and second derivatives.</summary>
internal static class SurfaceTerms
{
    /// <summary>Adds end-members, binary and ternary terms. An empty Hessian is not filled.</summary>
    /// <param name="model">The phase.</param>
    /// <param name="parameters">Parameter values in the order of <see cref="PhaseModel.Parameters"/>.</param>
    /// <param name="y">Site fractions.</param>
    /// <param name="gradient">Added to.</param>
    /// <param name="hessian">Added to, row by row; or empty.</param>
    /// <returns>The sum of the terms.</returns>
    internal static double Add(PhaseModel model, double[] parameters, ReadOnlySpan<double> y, Span<double> gradient, Span<double> hessian)
    {
        double sum = 0;
        int n = model.Variables;
        bool curved = !hessian.IsEmpty;
        (int V0, int V1)[] ends = model.Ends;
        for (int e = 0; e < ends.Length; e++)
        {
            (int i, int j) = ends[e];
            double g = parameters[e];
            if (j < 0)
            {
                sum += g * y[i];
                gradient[i] += g;
                continue;
            }

            sum += g * y[i] * y[j];
            gradient[i] += g * y[j];
            gradient[j] += g * y[i];
            if (curved)
            {
                hessian[(i * n) + j] += g;
                hessian[(j * n) + i] += g;
            }
        }

        foreach ((int i, int j, int parameter, int count) in model.Pairs)
        {
            sum += AddPair(parameters.AsSpan(parameter, count), i, j, n, y, gradient, hessian);
        }

        foreach ((int i, int j, int k, int parameter) in model.Triples)
        {
            sum += AddTriple(parameters.AsSpan(parameter, 3), [i, j, k], n, y, gradient, hessian);
        }

        return sum;
    }

    /// <summary>Adds the ideal mixing term sum share y ln y.</summary>
    internal static double AddMixing(PhaseModel model, ReadOnlySpan<double> y, Span<double> gradient, Span<double> hessian)
    {
        double sum = 0;
        int n = model.Variables;
        for (int v = 0; v < n; v++)
        {
            double log = Math.Log(y[v]);
            double share = model.Share[v];
            sum += share * y[v] * log;
            gradient[v] += share * (log + 1);
            if (!hessian.IsEmpty)
            {
                hessian[(v * n) + v] += share / y[v];
            }
        }

        return sum;
    }

    /// <summary>Redlich-Kister term y_i y_j P(d), P = sum L_v d^v, d = y_i - y_j.</summary>
    private static double AddPair(ReadOnlySpan<double> coefficients, int i, int j, int n, ReadOnlySpan<double> y, Span<double> gradient, Span<double> hessian)
    {
        double yi = y[i];
        double yj = y[j];
        double d = yi - yj;
        double p = 0;
        double p1 = 0;
        double p2 = 0;
        for (int v = coefficients.Length - 1; v >= 0; v--)
        {
            p2 = (p2 * d) + (2 * p1);
            p1 = (p1 * d) + p;
            p = (p * d) + coefficients[v];
        }

        double product = yi * yj;
        gradient[i] += (yj * p) + (product * p1);
        gradient[j] += (yi * p) - (product * p1);
        if (!hessian.IsEmpty)
        {
            hessian[(i * n) + i] += (2 * yj * p1) + (product * p2);
            hessian[(j * n) + j] += (product * p2) - (2 * yi * p1);
            double mixed = p + (d * p1) - (product * p2);
            hessian[(i * n) + j] += mixed;
            hessian[(j * n) + i] += mixed;
        }

        return product * p;
    }

    /// <summary>Ternary term y_i y_j y_k Q with Q linear in y (Muggianu weights).</summary>
    private static double AddTriple(ReadOnlySpan<double> l, ReadOnlySpan<int> at, int n, ReadOnlySpan<double> y, Span<double> gradient, Span<double> hessian)
    {
        double mean = (l[0] + l[1] + l[2]) / 3;
        ReadOnlySpan<double> q = [l[0] - mean, l[1] - mean, l[2] - mean];
        ReadOnlySpan<double> w = [y[at[0]], y[at[1]], y[at[2]]];
        double weight = mean + (q[0] * w[0]) + (q[1] * w[1]) + (q[2] * w[2]);
        double product = w[0] * w[1] * w[2];
        for (int a = 0; a < 3; a++)
        {
            int b = (a + 1) % 3;
            int c = (a + 2) % 3;
            gradient[at[a]] += (w[b] * w[c] * weight) + (product * q[a]);
            if (!hessian.IsEmpty)
            {
                hessian[(at[a] * n) + at[a]] += 2 * w[b] * w[c] * q[a];
                double mixed = (w[c] * weight) + (w[b] * w[c] * q[b]) + (w[a] * w[c] * q[a]);
                hessian[(at[a] * n) + at[b]] += mixed;
                hessian[(at[b] * n) + at[a]] += mixed;
            }
        }

        return product * weight;
    }
}
