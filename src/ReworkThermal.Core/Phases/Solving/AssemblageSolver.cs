using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// Newton's method for a given set of phases: equal chemical potentials and mass balance, at a fixed temperature or at the
/// temperature where one phase has a given amount. The site fractions are eliminated phase by phase, which leaves a linear system
/// in chemical potentials, amounts and temperature (B. Sundman, X.-G. Lu, H. Ohtani, Comput. Mater. Sci. 101 (2015) 127; the
/// elimination goes back to M. Hillert, Physica B 103 (1981) 31).
/// </summary>
internal sealed class AssemblageSolver(GibbsSurfaces surfaces)
{
    private const int MostIterations = 80;
    private const int MostOrder = 20;
    private const double Converged = 1e-10;

    private readonly double[] _matrix = new double[MostOrder * MostOrder];
    private readonly double[] _right = new double[MostOrder];
    private readonly double[] _scratchHessian = new double[TangentPlane.MostVariables * TangentPlane.MostVariables];
    private readonly double[] _scratchMatrix = new double[(TangentPlane.MostVariables + 2) * (TangentPlane.MostVariables + 2)];
    private readonly double[] _scratchRight = new double[(TangentPlane.MostVariables + 2) * TangentPlane.MostVariables];
    private readonly double[] _step = new double[TangentPlane.MostVariables];
    private readonly double[] _moved = new double[TangentPlane.MostVariables];
    private readonly double[] _spread = new double[MostOrder * MostOrder];

    /// <summary>Solves at the assemblage's temperature.</summary>
    /// <returns>Whether it converged; amounts may be negative.</returns>
    internal bool TrySolve(Assemblage assemblage, ReadOnlySpan<double> overall) => TrySolve(assemblage, overall, -1, double.NaN, double.NaN);

    /// <summary>Solves for the temperature at which one phase has the amount it now carries (zero, as a rule).</summary>
    internal bool TrySolveTemperature(Assemblage assemblage, ReadOnlySpan<double> overall, PhaseState held, double lowest, double highest) =>
        TrySolve(assemblage, overall, assemblage.Phases.IndexOf(held), lowest, highest);

    private bool TrySolve(Assemblage assemblage, ReadOnlySpan<double> overall, int held, double lowest, double highest)
    {
        double before = double.PositiveInfinity;
        int stalls = 0;
        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            surfaces.SetTemperature(assemblage.Kelvin);
            foreach (PhaseState phase in assemblage.Phases)
            {
                phase.Linearise(surfaces, _scratchHessian, _scratchMatrix, _scratchRight);
            }

            if (!TryStep(assemblage, overall, held, out double temperatureStep))
            {
                return false;
            }

            double change = Apply(assemblage, temperatureStep, held, lowest, highest);
            if (!double.IsFinite(change))
            {
                return false;
            }

            if (change < Converged)
            {
                return true;
            }

            stalls = change < 1e-7 && change >= before * 0.5 ? stalls + 1 : 0;
            if (stalls > 3)
            {
                return true;
            }

            before = change;
        }

        return false;
    }

    private bool TryStep(Assemblage assemblage, ReadOnlySpan<double> overall, int held, out double temperatureStep)
    {
        int n = overall.Length;
        int order = n + assemblage.Phases.Count;
        temperatureStep = 0;
        if (order > MostOrder)
        {
            return false;
        }

        Span<double> matrix = _matrix.AsSpan(0, order * order);
        Span<double> right = _right.AsSpan(0, order);
        matrix.Clear();
        for (int e = 0; e < n; e++)
        {
            right[e] = overall[e];
        }

        for (int p = 0; p < assemblage.Phases.Count; p++)
        {
            PhaseState phase = assemblage.Phases[p];
            for (int e = 0; e < n; e++)
            {
                matrix[((n + p) * order) + e] = phase.X[e];
                if (p == held)
                {
                    right[e] -= phase.X[e] * phase.Amount;
                }
                else
                {
                    matrix[(e * order) + n + p] = phase.X[e];
                }
            }

            right[n + p] = phase.G;
            if (!phase.Model.IsStoichiometric && phase.Amount != 0)
            {
                AddResponse(phase, matrix, right, order, held < 0 ? -1 : n + held);
            }

            if (held >= 0)
            {
                matrix[((n + p) * order) + n + held] = -phase.Slope;
            }
        }

        if (!SmallDenseSystem.TrySolve(matrix, right, order, 1))
        {
            return false;
        }

        right[..n].CopyTo(assemblage.Potentials);
        temperatureStep = held < 0 ? 0 : right[n + held];
        return true;
    }

    /// <summary>Adds how the composition of a phase answers to chemical potentials and temperature to the mass balances.</summary>
    private void AddResponse(PhaseState phase, Span<double> matrix, Span<double> right, int order, int temperatureColumn)
    {
        PhaseModel model = phase.Model;
        int m = model.Variables;
        int n = model.ElementCount;
        Span<double> spread = _spread.AsSpan(0, n * m);
        spread.Clear();
        for (int v = 0; v < m; v++)
        {
            int e = model.Element[v];
            for (int w = 0; w < m; w++)
            {
                spread[(e * m) + w] += model.Share[v] * phase.Response[(v * m) + w];
            }
        }

        for (int e = 0; e < n; e++)
        {
            double gradient = 0;
            double slope = 0;
            for (int w = 0; w < m; w++)
            {
                double entry = phase.Amount * spread[(e * m) + w];
                matrix[(e * order) + model.Element[w]] += entry * model.Share[w];
                gradient += entry * phase.Gradient[w];
                slope += entry * phase.SlopeGradient[w];
            }

            right[e] += gradient;
            if (temperatureColumn >= 0)
            {
                matrix[(e * order) + temperatureColumn] -= slope;
            }
        }
    }

    /// <summary>Applies the solution of the linear system; returns the largest relative change.</summary>
    private double Apply(Assemblage assemblage, double temperatureStep, int held, double lowest, double highest)
    {
        int n = assemblage.Potentials.Length;
        double change = Math.Abs(temperatureStep);
        double damping = Math.Min(1, 0.1 / Math.Max(change, 1e-300));
        double kelvin = assemblage.Kelvin;
        temperatureStep *= damping;
        for (int p = 0; p < assemblage.Phases.Count; p++)
        {
            PhaseState phase = assemblage.Phases[p];
            if (p != held)
            {
                change = Math.Max(change, Math.Abs(_right[n + p] - phase.Amount));
                phase.Amount = _right[n + p];
            }

            if (!phase.Model.IsStoichiometric)
            {
                change = Math.Max(change, Move(phase, assemblage.Potentials, temperatureStep));
            }
        }

        if (held >= 0)
        {
            assemblage.Kelvin = Math.Clamp(kelvin * (1 + temperatureStep), lowest, highest);
        }

        return change;
    }

    private double Move(PhaseState phase, ReadOnlySpan<double> potentials, double temperatureStep)
    {
        PhaseModel model = phase.Model;
        int m = model.Variables;
        Span<double> step = _step.AsSpan(0, m);
        double change = 0;
        for (int v = 0; v < m; v++)
        {
            double sum = 0;
            for (int w = 0; w < m; w++)
            {
                double force = (model.Share[w] * potentials[model.Element[w]]) - phase.Gradient[w] - (phase.SlopeGradient[w] * temperatureStep);
                sum += phase.Response[(v * m) + w] * force;
            }

            step[v] = sum;
            change = Math.Max(change, Math.Abs(sum) / Math.Max(phase.Y[v], 1e-9));
        }

        Span<double> moved = _moved.AsSpan(0, m);
        SiteFractions.Advance(model, phase.Y, step, 1, moved);
        moved.CopyTo(phase.Y);
        return change;
    }
}
