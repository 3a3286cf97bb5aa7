using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// As many compositions as there are elements, with non-negative amounts that add up to the overall composition: a vertex of the
/// linear programme "least G". The plane through them gives the chemical potentials.
/// </summary>
internal sealed class HullBasis
{
    private readonly int _n;
    private readonly PhaseModel[] _models;
    private readonly double[][] _y;
    private readonly double[] _energy;
    private readonly double[,] _columns;
    private readonly double[] _amounts;

    /// <summary>Starts from the pure elements as liquids.</summary>
    internal HullBasis(GibbsSurfaces surfaces, double[] overall)
    {
        _n = overall.Length;
        PhaseModel liquid = surfaces.System.Models[surfaces.System.Liquid];
        _models = new PhaseModel[_n];
        _y = new double[_n][];
        _energy = new double[_n];
        _columns = new double[_n, _n];
        _amounts = (double[])overall.Clone();
        Potentials = new double[_n];
        double[] gradient = new double[liquid.Variables];
        for (int e = 0; e < _n; e++)
        {
            double[] y = new double[liquid.Variables];
            Array.Fill(y, SiteFractions.Smallest);
            y[Array.IndexOf(liquid.Element, e)] = 1;
            _models[e] = liquid;
            _y[e] = y;
            _energy[e] = surfaces.Evaluate(liquid, y, gradient, []);
            _columns[e, e] = 1;
            Potentials[e] = _energy[e];
        }
    }

    /// <summary>Chemical potentials / R T of the plane.</summary>
    internal double[] Potentials { get; }

    /// <summary>Brings in a composition that lies under the plane; one that leaves is chosen so that no amount turns negative.</summary>
    internal void Enter(Basin basin, double height)
    {
        double[] x = new double[_n];
        basin.Model.Composition(basin.Y, x);
        double energy = height;
        for (int e = 0; e < _n; e++)
        {
            energy += Potentials[e] * x[e];
        }

        double[] weights = (double[])x.Clone();
        if (!SmallDenseSystem.TrySolve(MatrixCopy(false), weights, _n, 1))
        {
            return;
        }

        int leaving = -1;
        double least = double.PositiveInfinity;
        for (int k = 0; k < _n; k++)
        {
            if (weights[k] > 1e-12 && _amounts[k] / weights[k] < least)
            {
                least = _amounts[k] / weights[k];
                leaving = k;
            }
        }

        if (leaving < 0)
        {
            return;
        }

        for (int k = 0; k < _n; k++)
        {
            _amounts[k] = Math.Max(0, _amounts[k] - (least * weights[k]));
            _columns[k, leaving] = x[k];
        }

        _amounts[leaving] = least;
        _models[leaving] = basin.Model;
        _y[leaving] = (double[])basin.Y.Clone();
        _energy[leaving] = energy;
        double[] potentials = (double[])_energy.Clone();
        if (SmallDenseSystem.TrySolve(MatrixCopy(true), potentials, _n, 1))
        {
            potentials.CopyTo(Potentials, 0);
        }
    }

    /// <summary>The phases of the basis; compositions of one phase within a distance are merged.</summary>
    internal List<PhaseState> Merge(double distance)
    {
        List<PhaseState> merged = [];
        for (int k = 0; k < _n; k++)
        {
            if (_amounts[k] <= 0)
            {
                continue;
            }

            PhaseState? near = merged.Find(p => p.Model == _models[k] && SiteFractions.Distance(p.Y, _y[k]) < distance);
            if (near is null)
            {
                merged.Add(new PhaseState(_models[k], _y[k], _amounts[k]));
                continue;
            }

            double total = near.Amount + _amounts[k];
            for (int v = 0; v < near.Y.Length; v++)
            {
                near.Y[v] = ((near.Amount * near.Y[v]) + (_amounts[k] * _y[k][v])) / total;
            }

            near.Amount = total;
        }

        return merged;
    }

    private double[] MatrixCopy(bool transposed)
    {
        double[] copy = new double[_n * _n];
        for (int r = 0; r < _n; r++)
        {
            for (int c = 0; c < _n; c++)
            {
                copy[(r * _n) + c] = transposed ? _columns[c, r] : _columns[r, c];
            }
        }

        return copy;
    }
}
