using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>A phase at a composition, with its amount and its linearisation.</summary>
internal sealed class PhaseState
{
    internal PhaseState(PhaseModel model, ReadOnlySpan<double> y, double amount)
    {
        Model = model;
        int n = model.Variables;
        Y = y.ToArray();
        X = new double[model.ElementCount];
        model.Composition(Y, X);
        Amount = amount;
        Gradient = new double[n];
        SlopeGradient = new double[n];
        Response = new double[n * n];
    }

    internal PhaseModel Model { get; }

    /// <summary>Site fractions.</summary>
    internal double[] Y { get; }

    /// <summary>Composition per mole of atoms.</summary>
    internal double[] X { get; }

    /// <summary>Moles of atoms, of one mole of atoms in all; may be negative on the way to a solution.</summary>
    internal double Amount { get; set; }

    /// <summary>G / R T per mole of atoms.</summary>
    internal double G { get; private set; }

    /// <summary>-S / R per mole of atoms.</summary>
    internal double Slope { get; private set; }

    internal double[] Gradient { get; }

    internal double[] SlopeGradient { get; }

    /// <summary>Change of site fractions per change of their driving forces at fixed sums: the projected inverse Hessian.</summary>
    internal double[] Response { get; }

    internal PhaseState Copy() => new(Model, Y, Amount)
    {
        G = G,
        Slope = Slope,
    };

    /// <summary>Value, slope and response at the present site fractions.</summary>
    internal void Linearise(GibbsSurfaces surfaces, Span<double> hessian, Span<double> matrix, Span<double> right)
    {
        int n = Model.Variables;
        hessian = hessian[..(n * n)];
        Model.Composition(Y, X);
        G = surfaces.Evaluate(Model, Y, Gradient, Model.IsStoichiometric ? [] : hessian);
        Slope = surfaces.EvaluateSlope(Model, Y, SlopeGradient);
        if (Model.IsStoichiometric)
        {
            return;
        }

        int order = n + Model.Sublattices;
        matrix = matrix[..(order * order)];
        right = right[..(order * n)];
        Span<double> scale = stackalloc double[TangentPlane.MostVariables];
        BorderedHessian.Fill(Model, Y, hessian, scale, matrix);
        right.Clear();
        for (int v = 0; v < n; v++)
        {
            right[(v * n) + v] = 1;
        }

        if (!SmallDenseSystem.TrySolve(matrix, right, order, n))
        {
            FillIdealResponse();
            return;
        }

        for (int v = 0; v < n; v++)
        {
            for (int w = 0; w < n; w++)
            {
                Response[(v * n) + w] = scale[v] * scale[w] * right[(v * n) + w];
            }
        }
    }

    private void FillIdealResponse()
    {
        int n = Model.Variables;
        Array.Clear(Response);
        for (int v = 0; v < n; v++)
        {
            for (int w = 0; w < n; w++)
            {
                if (Model.Sublattice[v] == Model.Sublattice[w])
                {
                    Response[(v * n) + w] = Y[v] / Model.Share[v] * ((v == w ? 1 : 0) - Y[w]);
                }
            }
        }
    }
}
