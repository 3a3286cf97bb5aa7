using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// The Gibbs energies of all phases at one temperature, with exact derivatives. Everything is per mole of atoms and divided by
/// R T: g = G / (R T), and the "slope" is T (dG/dT) / (R T) = -S / R, so that the enthalpy is H / (R T) = g - slope.
/// One instance belongs to one thread.
/// </summary>
internal sealed class GibbsSurfaces
{
    private readonly double[] _functionValues;
    private readonly double[] _functionSlopes;
    private readonly double[][] _values;
    private readonly double[][] _slopes;
    private readonly double[] _evaluatedAt;
    private TemperaturePowers _powers;
    private bool _functionsKnown;

    internal GibbsSurfaces(ReducedSystem system)
    {
        System = system;
        _functionValues = new double[system.Database.Functions.Count];
        _functionSlopes = new double[system.Database.Functions.Count];
        _values = [.. system.Models.Select(m => new double[m.Parameters.Length])];
        _slopes = [.. system.Models.Select(m => new double[m.Parameters.Length])];
        _evaluatedAt = new double[system.Models.Length];
    }

    internal ReducedSystem System { get; }

    /// <summary>Temperature [K].</summary>
    internal double Kelvin { get; private set; }

    /// <summary>R T [J/mol].</summary>
    internal double ThermalEnergy { get; private set; }

    internal void SetTemperature(double kelvin)
    {
        if (kelvin == Kelvin)
        {
            return;
        }

        Kelvin = kelvin;
        ThermalEnergy = System.Database.GasConstant * kelvin;
        _powers = new TemperaturePowers(kelvin);
        _functionsKnown = false;
    }

    /// <summary>g, its gradient and, when asked for, its Hessian (row by row) over the variables.</summary>
    internal double Evaluate(PhaseModel model, ReadOnlySpan<double> y, Span<double> gradient, Span<double> hessian)
    {
        Prepare(model);
        gradient.Clear();
        hessian.Clear();
        double excess = SurfaceTerms.Add(model, _values[model.Index], y, gradient, hessian);
        return excess + SurfaceTerms.AddMixing(model, y, gradient, hessian);
    }

    /// <summary>-S/R and its gradient over the variables.</summary>
    internal double EvaluateSlope(PhaseModel model, ReadOnlySpan<double> y, Span<double> gradient)
    {
        Prepare(model);
        gradient.Clear();
        double excess = SurfaceTerms.Add(model, _slopes[model.Index], y, gradient, []);
        return excess + SurfaceTerms.AddMixing(model, y, gradient, []);
    }

    private void Prepare(PhaseModel model)
    {
        if (_evaluatedAt[model.Index] == Kelvin)
        {
            return;
        }

        if (!_functionsKnown)
        {
            IReadOnlyList<GibbsFunction> functions = System.Database.Functions;
            for (int i = 0; i < functions.Count; i++)
            {
                (_functionValues[i], _functionSlopes[i]) = GibbsFunction.PieceAt(functions[i].Pieces, Kelvin).At(_powers);
            }

            _functionsKnown = true;
        }

        double valueScale = 1 / (ThermalEnergy * model.Atoms);
        double slopeScale = 1 / (System.Database.GasConstant * model.Atoms);
        double[] values = _values[model.Index];
        double[] slopes = _slopes[model.Index];
        for (int p = 0; p < values.Length; p++)
        {
            (double value, double slope) = model.Parameters[p].At(_powers, _functionValues, _functionSlopes);
            values[p] = value * valueScale;
            slopes[p] = slope * slopeScale;
        }

        _evaluatedAt[model.Index] = Kelvin;
    }
}
