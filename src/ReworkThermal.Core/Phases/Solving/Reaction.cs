using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// What happens when a phase joins an assemblage. As a rule it simply starts to grow as the temperature falls. When its composition
/// is a combination of those present (an invariant reaction, congruent melting, a pure element) it grows at constant temperature
/// until one of the others is used up.
/// </summary>
internal static class Reaction
{
    private const double Dependent = 1e-7;

    /// <summary>Lets a phase join.</summary>
    /// <param name="before">Assemblage at the temperature of the reaction.</param>
    /// <param name="joining">The phase that forms, in equilibrium with the others.</param>
    /// <returns>The assemblage after the reaction, at the same temperature.</returns>
    internal static Assemblage Join(Assemblage before, PhaseState joining)
    {
        int p = before.Phases.Count;
        double[] normal = new double[p * p];
        double[] weights = new double[p];
        for (int a = 0; a < p; a++)
        {
            for (int b = 0; b < p; b++)
            {
                normal[(a * p) + b] = Dot(before.Phases[a].X, before.Phases[b].X);
            }

            weights[a] = Dot(before.Phases[a].X, joining.X);
        }

        Assemblage after = new(before.Kelvin, before.Phases, before.Potentials);
        if (!SmallDenseSystem.TrySolve(normal, weights, p, 1) || Residual(before, joining, weights) > Dependent)
        {
            after.Phases.Add(joining);
            return after;
        }

        double extent = double.PositiveInfinity;
        int used = -1;
        for (int a = 0; a < p; a++)
        {
            if (weights[a] > 1e-9 && before.Phases[a].Amount / weights[a] < extent)
            {
                extent = Math.Max(0, before.Phases[a].Amount / weights[a]);
                used = a;
            }
        }

        after = before.Copy();
        for (int a = 0; a < p; a++)
        {
            after.Phases[a].Amount -= extent * weights[a];
        }

        after.Phases.RemoveAt(used);
        PhaseState joined = joining.Copy();
        joined.Amount = extent;
        after.Phases.Add(joined);
        return after;
    }

    private static double Residual(Assemblage before, PhaseState joining, double[] weights)
    {
        double largest = 0;
        for (int e = 0; e < joining.X.Length; e++)
        {
            double sum = joining.X[e];
            for (int a = 0; a < weights.Length; a++)
            {
                sum -= weights[a] * before.Phases[a].X[e];
            }

            largest = Math.Max(largest, Math.Abs(sum));
        }

        return largest;
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
