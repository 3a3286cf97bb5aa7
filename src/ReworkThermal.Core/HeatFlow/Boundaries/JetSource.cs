using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>A hot-air jet on the joint: a gas temperature and a coefficient that falls with the distance from the axis.</summary>
public sealed record JetSource
{
    private readonly double[] _radiiM;
    private readonly double[] _coefficients;

    /// <summary>Creates a jet.</summary>
    /// <param name="name">Name for reports.</param>
    /// <param name="gas">Temperature of the gas at the board.</param>
    /// <param name="radii">Distances from the axis, rising, at least two.</param>
    /// <param name="coefficients">Coefficient at each distance, not negative; linear between, room convection beyond the last.</param>
    public JetSource(string name, Temperature gas, IReadOnlyList<Length> radii, IReadOnlyList<HeatTransferCoefficient> coefficients)
    {
        ArgumentNullException.ThrowIfNull(radii);
        ArgumentNullException.ThrowIfNull(coefficients);
        if (radii.Count < 2 || radii.Count != coefficients.Count)
        {
            throw new ArgumentException("a jet needs at least two distances, each with a coefficient", nameof(radii));
        }

        Name = name;
        Gas = gas;
        _radiiM = [.. radii.Select(r => r.Meters)];
        _coefficients = [.. coefficients.Select(c => c.WattsPerSquareMeterKelvin)];
    }

    /// <summary>Name for reports.</summary>
    public string Name { get; }

    /// <summary>Temperature of the gas at the board.</summary>
    public Temperature Gas { get; }

    /// <summary>Distance up to which the jet acts.</summary>
    public Length Reach => Length.FromMeters(_radiiM[^1]);

    /// <summary>The same jet with every coefficient scaled, for a bench whose jet is known to be stronger or weaker.</summary>
    /// <param name="factor">Above zero.</param>
    /// <returns>The scaled jet.</returns>
    public JetSource WithCoefficientsScaled(double factor) => new(
        Name,
        Gas,
        [.. _radiiM.Select(r => Length.FromMeters(r))],
        [.. _coefficients.Select(c => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(c * factor))]);

    /// <summary>Coefficient at a distance [W/m2K].</summary>
    internal double At(double radiusM)
    {
        int i = 0;
        while (i < _radiiM.Length - 2 && _radiiM[i + 1] < radiusM)
        {
            i++;
        }

        double share = Math.Clamp((radiusM - _radiiM[i]) / (_radiiM[i + 1] - _radiiM[i]), 0, 1);
        return _coefficients[i] + (share * (_coefficients[i + 1] - _coefficients[i]));
    }
}
