namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// The places where each phase comes closest to the tangent plane, followed from temperature to temperature, so that a phase about
/// to form is noticed at the cost of a few Newton steps. A full search from every start renews the set from time to time.
/// </summary>
internal sealed class BasinSet(EquilibriumKernel kernel)
{
    private List<Basin> _basins = [];


    internal IReadOnlyList<Basin> All => _basins;

    /// <summary>Temperature [K] of the last search from every start.</summary>
    internal double KelvinOfLastSearch { get; private set; } = double.PositiveInfinity;

    /// <summary>Finds all basins afresh.</summary>
    internal void Renew(double kelvin, ReadOnlySpan<double> potentials, double hopeless = double.PositiveInfinity)
    {
        kernel.Surfaces.SetTemperature(kelvin);
        KelvinOfLastSearch = kelvin;
        _basins = [];
        foreach (PhaseModel model in kernel.System.Models)
        {
            _basins.AddRange(kernel.Search.Basins(model, potentials, hopeless));
        }
    }

    /// <summary>Follows all basins to a new plane; basins that have run together become one.</summary>
    internal void Follow(double kelvin, ReadOnlySpan<double> potentials)
    {
        kernel.Surfaces.SetTemperature(kelvin);
        foreach (Basin basin in _basins)
        {
            basin.Height = kernel.Plane.Minimise(basin.Model, basin.Y, potentials, CompositionSearch.HopelessHeight);
        }

        for (int a = _basins.Count - 1; a > 0; a--)
        {
            for (int b = 0; b < a; b++)
            {
                if (_basins[a].Model == _basins[b].Model && SiteFractions.Distance(_basins[a].Y, _basins[b].Y) < CompositionSearch.Same)
                {
                    _basins.RemoveAt(a);
                    break;
                }
            }
        }
    }

    /// <summary>The deepest basin, if it lies under the plane by more than a tolerance [R T].</summary>
    internal Basin? Deepest(double tolerance)
    {
        Basin? deepest = null;
        foreach (Basin basin in _basins)
        {
            if (basin.Height < (deepest?.Height ?? -tolerance))
            {
                deepest = basin;
            }
        }

        return deepest;
    }
}
