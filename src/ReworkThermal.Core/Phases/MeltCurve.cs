using UnitsNet;

namespace ReworkThermal.Core.Phases;

/// <summary>
/// Liquid share and enthalpy of an alloy against temperature, by rising temperature from 298.15 K into the liquid. Two points at
/// one temperature are a reaction at that temperature; between points both quantities are linear. Below the solidus the solids
/// keep the amounts and compositions they have at the solidus: at soldering time scales they do not follow equilibrium.
/// </summary>
public sealed class MeltCurve
{
    private readonly double[] _kelvin;
    private readonly double[] _liquid;
    private readonly double[] _joulePerKilogram;

    internal MeltCurve(IReadOnlyList<MeltCurvePoint> points)
    {
        Points = points;
        _kelvin = [.. points.Select(p => p.Temperature.Kelvins)];
        _liquid = [.. points.Select(p => p.LiquidMassFraction)];
        _joulePerKilogram = [.. points.Select(p => p.Enthalpy.JoulesPerKilogram)];
    }

    /// <summary>Points by rising temperature.</summary>
    public IReadOnlyList<MeltCurvePoint> Points { get; }

    /// <summary>Share of the mass that is liquid [kg/kg]; at the temperature of a reaction, the value above it.</summary>
    /// <param name="temperature">Any temperature; outside the points the end values hold.</param>
    /// <returns>0 to 1.</returns>
    public double LiquidMassFractionAt(Temperature temperature) => At(_liquid, temperature.Kelvins, false);

    /// <summary>Specific enthalpy; zero for the stable solid elements at 298.15 K. At the temperature of a reaction, the value above it.</summary>
    /// <param name="temperature">Any temperature; outside the points the slope of the last interval is continued.</param>
    /// <returns>Enthalpy.</returns>
    public SpecificEnergy EnthalpyAt(Temperature temperature) => SpecificEnergy.FromJoulesPerKilogram(At(_joulePerKilogram, temperature.Kelvins, true));

    private double At(double[] values, double kelvin, bool extend)
    {
        int upper = UpperIndex(kelvin);
        if (!extend && (kelvin <= _kelvin[0] || kelvin >= _kelvin[^1]))
        {
            return kelvin <= _kelvin[0] ? values[0] : values[^1];
        }

        double width = _kelvin[upper] - _kelvin[upper - 1];
        return values[upper - 1] + ((values[upper] - values[upper - 1]) * (kelvin - _kelvin[upper - 1]) / width);
    }

    /// <summary>First point strictly above a temperature, with a lower neighbour at a different temperature.</summary>
    private int UpperIndex(double kelvin)
    {
        int low = 1;
        int high = _kelvin.Length - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (_kelvin[middle] > kelvin)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return low;
    }
}
