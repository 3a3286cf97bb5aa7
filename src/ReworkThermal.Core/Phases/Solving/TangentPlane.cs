using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// Finds where a phase comes closest to, or dips below, the plane through the chemical potentials: the minimum over the phase's
/// composition of g - mu x. A negative minimum means that the phase would form (its driving force is minus the minimum).
/// (M. Hillert, Phase Equilibria, Phase Diagrams and Phase Transformations, 2nd ed. 2008, on the driving force.)
/// </summary>
internal sealed class TangentPlane(GibbsSurfaces surfaces)
{
    private const int MostIterations = 60;
    private const double Converged = 1e-10;
    private const double DoubtfulDecrement = 1e-3;

    private readonly double[] _gradient = new double[MostVariables];
    private readonly double[] _hessian = new double[MostVariables * MostVariables];
    private readonly double[] _step = new double[MostVariables];
    private readonly double[] _trial = new double[MostVariables];
    private readonly double[] _matrix = new double[(MostVariables + 2) * (MostVariables + 2)];
    private readonly double[] _right = new double[MostVariables + 2];
    private readonly double[] _scale = new double[MostVariables];

    /// <summary>Upper bound of the number of variables of one phase (two sublattices of all elements).</summary>
    internal const int MostVariables = 2 * ElementData.Count;

    /// <summary>Height of a composition over the plane, g - mu x.</summary>
    internal double HeightAt(PhaseModel model, ReadOnlySpan<double> y, ReadOnlySpan<double> potentials)
    {
        int n = model.Variables;
        return Height(model, y, potentials, _gradient.AsSpan(0, n), []);
    }

    /// <summary>Minimises the height over the composition.</summary>
    /// <param name="model">The phase.</param>
    /// <param name="y">Start; becomes the minimum.</param>
    /// <param name="potentials">Chemical potentials / R T.</param>
    /// <param name="hopeless">Stop early when the height can hardly get under this value.</param>
    /// <returns>The height at the minimum [R T].</returns>
    internal double Minimise(PhaseModel model, Span<double> y, ReadOnlySpan<double> potentials, double hopeless = double.PositiveInfinity)
    {
        int n = model.Variables;
        Span<double> gradient = _gradient.AsSpan(0, n);
        Span<double> hessian = _hessian.AsSpan(0, n * n);
        Span<double> step = _step.AsSpan(0, n);
        Span<double> trial = _trial.AsSpan(0, n);
        double height = Height(model, y, potentials, gradient, model.IsStoichiometric ? [] : hessian);
        if (model.IsStoichiometric)
        {
            return height;
        }

        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            double decrement = Direction(model, y, gradient, hessian, step);
            if (decrement < Converged)
            {
                break;
            }

            // Half the decrement is the Newton model's estimate of what is left to gain.
            if (iteration > 1 && height - (4 * decrement) > hopeless && decrement < DoubtfulDecrement * 1000)
            {
                break;
            }

            double scale = 1;
            double moved = double.PositiveInfinity;
            for (int halving = 0; halving < 30; halving++)
            {
                SiteFractions.Advance(model, y, step, scale, trial);
                moved = Height(model, trial, potentials, gradient, hessian);
                if (moved <= height)
                {
                    break;
                }

                scale *= 0.4;
            }

            if (!(moved <= height))
            {
                break;
            }

            trial.CopyTo(y);
            height = moved;
        }

        return height;
    }

    private double Height(PhaseModel model, ReadOnlySpan<double> y, ReadOnlySpan<double> potentials, Span<double> gradient, Span<double> hessian)
    {
        double height = surfaces.Evaluate(model, y, gradient, hessian);
        for (int v = 0; v < gradient.Length; v++)
        {
            double potential = model.Share[v] * potentials[model.Element[v]];
            height -= potential * y[v];
            gradient[v] -= potential;
        }

        return height;
    }

    /// <summary>Newton direction where the surface is convex, ideal-mixing direction elsewhere; returns the slope along it (positive = downhill).</summary>
    private double Direction(PhaseModel model, ReadOnlySpan<double> y, ReadOnlySpan<double> gradient, ReadOnlySpan<double> hessian, Span<double> step)
    {
        int n = model.Variables;
        int order = n + model.Sublattices;
        Span<double> matrix = _matrix.AsSpan(0, order * order);
        Span<double> right = _right.AsSpan(0, order);
        BorderedHessian.Fill(model, y, hessian, _scale, matrix);
        for (int v = 0; v < n; v++)
        {
            right[v] = -_scale[v] * gradient[v];
        }

        right[n..].Clear();
        if (SmallDenseSystem.TrySolve(matrix, right, order, 1))
        {
            double slope = 0;
            for (int v = 0; v < n; v++)
            {
                step[v] = _scale[v] * right[v];
                slope -= step[v] * gradient[v];
            }

            if (slope > 0 && double.IsFinite(slope))
            {
                return slope;
            }
        }

        return IdealDirection(model, y, gradient, step);
    }

    private static double IdealDirection(PhaseModel model, ReadOnlySpan<double> y, ReadOnlySpan<double> gradient, Span<double> step)
    {
        double slope = 0;
        for (int s = 0; s < model.Sublattices; s++)
        {
            double mean = 0;
            for (int v = model.First[s]; v < model.First[s + 1]; v++)
            {
                mean += y[v] * gradient[v];
            }

            for (int v = model.First[s]; v < model.First[s + 1]; v++)
            {
                step[v] = -(y[v] / model.Share[v]) * (gradient[v] - mean);
                slope -= step[v] * gradient[v];
            }
        }

        return slope;
    }
}
