namespace ReworkThermal.Core.Phases.Solving;

/// <summary>Steps in site fractions that keep them positive and summing to one on each sublattice.</summary>
internal static class SiteFractions
{
    /// <summary>Smallest site fraction carried.</summary>
    internal const double Smallest = 1e-30;

    /// <summary>
    /// Applies a Newton step. Where a fraction is small or shrinks, the step is taken in its logarithm: the chemical potential of
    /// a dilute constituent is linear in ln y, so that traces converge in one or two steps instead of creeping.
    /// </summary>
    internal static void Advance(PhaseModel model, ReadOnlySpan<double> y, ReadOnlySpan<double> step, double scale, Span<double> result)
    {
        for (int v = 0; v < y.Length; v++)
        {
            double relative = scale * step[v] / y[v];
            double moved = relative < 0 || y[v] < 0.02
                ? y[v] * Math.Exp(Math.Clamp(relative, -12, 60))
                : y[v] * (1 + relative);
            result[v] = Math.Clamp(moved, Smallest, relative > 0 ? Math.Max(0.5, Math.Min(2 * y[v], 1)) : 1);
        }

        Normalise(model, result);
    }

    /// <summary>Scales the fractions of each sublattice to sum to one.</summary>
    internal static void Normalise(PhaseModel model, Span<double> y)
    {
        for (int s = 0; s < model.Sublattices; s++)
        {
            double sum = 0;
            for (int v = model.First[s]; v < model.First[s + 1]; v++)
            {
                sum += y[v];
            }

            for (int v = model.First[s]; v < model.First[s + 1]; v++)
            {
                y[v] = Math.Max(y[v] / sum, Smallest);
            }
        }
    }

    /// <summary>Largest difference of two sets of site fractions.</summary>
    internal static double Distance(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double largest = 0;
        for (int v = 0; v < a.Length; v++)
        {
            largest = Math.Max(largest, Math.Abs(a[v] - b[v]));
        }

        return largest;
    }
}
