using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Materials;

/// <summary>
/// Heat content and liquid fraction of a solder against temperature. This is all that the heat model knows of an alloy: whoever has
/// a melt curve turns it into one of these.
/// </summary>
/// <remarks>
/// Piecewise linear between its points; beyond the ends the slope of the last piece is kept. A melting step at one temperature (a
/// pure metal, a eutectic) is spread over <see cref="StepSpreadK"/>, so that temperature follows from enthalpy and back.
/// </remarks>
public sealed class EnthalpyCurve
{
    /// <summary>Temperature range over which an isothermal step is spread [K].</summary>
    public const double StepSpreadK = 0.01;

    private readonly double[] _temperatureK;
    private readonly double[] _enthalpy;
    private readonly double[] _liquid;

    /// <summary>Creates a curve from points.</summary>
    /// <param name="temperatureK">Temperatures [K], not falling; two equal ones make an isothermal step. At least two.</param>
    /// <param name="enthalpyJPerKg">Specific enthalpies [J/kg] from any common zero, rising with every point; same length.</param>
    /// <param name="liquidFraction">Liquid share of the mass at each point, 0 to 1, not falling; same length.</param>
    /// <param name="density">Density, taken the same for solid and liquid, above zero.</param>
    /// <param name="solidConductivity">Conductivity of the solid, above zero.</param>
    /// <param name="liquidConductivity">Conductivity of the liquid, above zero.</param>
    /// <exception cref="ArgumentException">A value is not finite, out of range or not in order.</exception>
    public EnthalpyCurve(
        ReadOnlySpan<double> temperatureK,
        ReadOnlySpan<double> enthalpyJPerKg,
        ReadOnlySpan<double> liquidFraction,
        Density density,
        ThermalConductivity solidConductivity,
        ThermalConductivity liquidConductivity)
    {
        if (temperatureK.Length < 2 || enthalpyJPerKg.Length != temperatureK.Length || liquidFraction.Length != temperatureK.Length)
        {
            throw new ArgumentException("an enthalpy curve needs at least two points, each with temperature, enthalpy and liquid fraction", nameof(temperatureK));
        }

        _temperatureK = temperatureK.ToArray();
        _enthalpy = enthalpyJPerKg.ToArray();
        _liquid = liquidFraction.ToArray();
        for (int i = 0; i < _temperatureK.Length; i++)
        {
            bool finite = double.IsFinite(_temperatureK[i]) && double.IsFinite(_enthalpy[i]) && _temperatureK[i] > 0;
            bool fraction = _liquid[i] is >= 0 and <= 1 && (i == 0 || _liquid[i] >= _liquid[i - 1] - 1e-9);
            bool rising = i == 0 || (temperatureK[i] >= temperatureK[i - 1] && _enthalpy[i] > _enthalpy[i - 1]);
            if (!finite || !fraction || !rising)
            {
                throw new ArgumentException($"point {i + 1} of the enthalpy curve is not finite or not above the one before it", nameof(enthalpyJPerKg));
            }
        }

        for (int i = 1; i < _temperatureK.Length; i++)
        {
            _temperatureK[i] = Math.Max(_temperatureK[i], _temperatureK[i - 1] + (temperatureK[i] == temperatureK[i - 1] ? StepSpreadK : 1e-9));
        }

        RequirePositive(density.KilogramsPerCubicMeter, nameof(density));
        RequirePositive(solidConductivity.WattsPerMeterKelvin, nameof(solidConductivity));
        RequirePositive(liquidConductivity.WattsPerMeterKelvin, nameof(liquidConductivity));
        Density = density;
        SolidConductivity = solidConductivity;
        LiquidConductivity = liquidConductivity;
    }

    /// <summary>Temperatures of the points [K], rising.</summary>
    public ReadOnlySpan<double> TemperatureK => _temperatureK;

    /// <summary>Specific enthalpies of the points [J/kg], rising.</summary>
    public ReadOnlySpan<double> EnthalpyJPerKg => _enthalpy;

    /// <summary>Liquid share of the mass at the points, 0 to 1.</summary>
    public ReadOnlySpan<double> LiquidFraction => _liquid;

    /// <summary>Density.</summary>
    public Density Density { get; }

    /// <summary>Conductivity of the solid.</summary>
    public ThermalConductivity SolidConductivity { get; }

    /// <summary>Conductivity of the liquid.</summary>
    public ThermalConductivity LiquidConductivity { get; }

    /// <summary>Curve of a material that melts evenly between two temperatures.</summary>
    /// <param name="solidus">Start of melting.</param>
    /// <param name="liquidus">End of melting, not below the solidus; equal for a pure metal or a eutectic.</param>
    /// <param name="latentHeat">Latent heat, zero or more.</param>
    /// <param name="solidHeat">Specific heat of the solid, above zero.</param>
    /// <param name="liquidHeat">Specific heat of the liquid, above zero.</param>
    /// <param name="density">Density.</param>
    /// <param name="solidConductivity">Conductivity of the solid.</param>
    /// <param name="liquidConductivity">Conductivity of the liquid.</param>
    /// <returns>The curve. Between solidus and liquidus the sensible part is the mean of both specific heats.</returns>
    public static EnthalpyCurve Melting(
        Temperature solidus,
        Temperature liquidus,
        SpecificEnergy latentHeat,
        SpecificEntropy solidHeat,
        SpecificEntropy liquidHeat,
        Density density,
        ThermalConductivity solidConductivity,
        ThermalConductivity liquidConductivity)
    {
        const double reachK = 200;
        double low = solidus.Kelvins;
        double high = liquidus.Kelvins;
        double solid = solidHeat.JoulesPerKilogramKelvin;
        double liquid = liquidHeat.JoulesPerKilogramKelvin;
        double atSolidus = solid * reachK;
        double atLiquidus = atSolidus + latentHeat.JoulesPerKilogram + ((high - low) * (solid + liquid) / 2);
        return new EnthalpyCurve(
            [low - reachK, low, high, high + reachK],
            [0, atSolidus, atLiquidus, atLiquidus + (liquid * reachK)],
            [0, 0, 1, 1],
            density,
            solidConductivity,
            liquidConductivity);
    }

    private static void RequirePositive(double value, string name)
    {
        if (!double.IsFinite(value) || value <= 0)
        {
            throw new ArgumentOutOfRangeException(name, value, "must be finite and above zero");
        }
    }
}
