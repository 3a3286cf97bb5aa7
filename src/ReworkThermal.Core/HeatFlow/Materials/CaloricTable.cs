namespace ReworkThermal.Core.HeatFlow.Materials;

/// <summary>
/// Volumetric enthalpy [J/m3] against temperature [K], piecewise linear, with the look-up in either direction that a solver needs
/// thousands of times: a hint table finds the piece at once.
/// </summary>
internal sealed class CaloricTable
{
    private const int Hints = 512;

    private readonly double[] _temperatureK;
    private readonly double[] _enthalpy;
    private readonly double[] _liquid;
    private readonly int[] _hint;
    private readonly double _hintScale;

    internal CaloricTable(ReadOnlySpan<double> temperatureK, ReadOnlySpan<double> enthalpyJPerM3, ReadOnlySpan<double> liquidFraction)
    {
        _temperatureK = temperatureK.ToArray();
        _enthalpy = enthalpyJPerM3.ToArray();
        _liquid = liquidFraction.ToArray();
        _hint = new int[Hints + 1];
        double span = _enthalpy[^1] - _enthalpy[0];
        _hintScale = Hints / span;
        int piece = 0;
        for (int h = 0; h <= Hints; h++)
        {
            double at = _enthalpy[0] + (span * h / Hints);
            while (piece < _enthalpy.Length - 2 && _enthalpy[piece + 1] <= at)
            {
                piece++;
            }

            _hint[h] = piece;
        }
    }

    /// <summary>Enthalpy at the end of the first piece [J/m3].</summary>
    internal double FirstKink => _enthalpy[1];

    /// <summary>Least slope dH/dT of all pieces [J/m3K]: bounds a temperature by an enthalpy.</summary>
    internal double LeastSlope
    {
        get
        {
            double least = double.PositiveInfinity;
            for (int i = 0; i + 1 < _enthalpy.Length; i++)
            {
                least = Math.Min(least, Slope(i));
            }

            return least;
        }
    }

    /// <summary>Table of a solder.</summary>
    internal static CaloricTable Of(EnthalpyCurve curve)
    {
        double density = curve.Density.KilogramsPerCubicMeter;
        double[] volumetric = new double[curve.EnthalpyJPerKg.Length];
        for (int i = 0; i < volumetric.Length; i++)
        {
            volumetric[i] = density * curve.EnthalpyJPerKg[i];
        }

        return new CaloricTable(curve.TemperatureK, volumetric, curve.LiquidFraction);
    }

    /// <summary>The piece an enthalpy lies on.</summary>
    internal int PieceAt(double enthalpy)
    {
        double scaled = (enthalpy - _enthalpy[0]) * _hintScale;
        int piece = scaled <= 0 ? 0 : scaled >= Hints ? _hint[Hints] : _hint[(int)scaled];
        while (piece < _enthalpy.Length - 2 && _enthalpy[piece + 1] <= enthalpy)
        {
            piece++;
        }

        return piece;
    }

    /// <summary>Slope dH/dT of a piece [J/m3K].</summary>
    internal double Slope(int piece) => (_enthalpy[piece + 1] - _enthalpy[piece]) / (_temperatureK[piece + 1] - _temperatureK[piece]);

    /// <summary>Temperature [K] at an enthalpy on a known piece.</summary>
    internal double TemperatureAt(double enthalpy, int piece) => _temperatureK[piece] + ((enthalpy - _enthalpy[piece]) / Slope(piece));

    /// <summary>
    /// Follows the curve until its rise and that of something proportional to temperature add up to an amount:
    /// H' - H + s (T' - T) = amount. The left side rises all along the curve, so there is one such place.
    /// </summary>
    /// <param name="enthalpy">Where to start [J/m3].</param>
    /// <param name="amount">How far to go, either way [J/m3].</param>
    /// <param name="perKelvin">The proportion s, zero or more [J/m3K].</param>
    /// <returns>Change of temperature on the way [K].</returns>
    internal double Follow(double enthalpy, double amount, double perKelvin)
    {
        int piece = PieceAt(enthalpy);
        double start = TemperatureAt(enthalpy, piece);
        double reached = start;
        while (true)
        {
            double slope = Slope(piece) + perKelvin;
            bool down = amount < 0;
            bool last = piece == (down ? 0 : _enthalpy.Length - 2);
            double end = _temperatureK[down ? piece : piece + 1];
            double cost = slope * (end - reached);
            if (last || Math.Abs(amount) <= Math.Abs(cost))
            {
                return reached + (amount / slope) - start;
            }

            amount -= cost;
            reached = end;
            piece += down ? -1 : 1;
        }
    }

    /// <summary>Liquid fraction at an enthalpy on a known piece, 0 to 1.</summary>
    internal double LiquidAt(double enthalpy, int piece)
    {
        double share = Math.Clamp((enthalpy - _enthalpy[piece]) / (_enthalpy[piece + 1] - _enthalpy[piece]), 0, 1);
        return _liquid[piece] + (share * (_liquid[piece + 1] - _liquid[piece]));
    }

    /// <summary>Enthalpy [J/m3] at a temperature [K].</summary>
    internal double EnthalpyAt(double temperatureK)
    {
        int piece = 0;
        while (piece < _enthalpy.Length - 2 && _temperatureK[piece + 1] <= temperatureK)
        {
            piece++;
        }

        return _enthalpy[piece] + (Slope(piece) * (temperatureK - _temperatureK[piece]));
    }
}
