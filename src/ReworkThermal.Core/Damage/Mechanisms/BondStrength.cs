using UnitsNet;

namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>
/// How well copper holds to the laminate: kept share K = max(0, 1 - D)(1 - delta)^N after a damage sum D and N melts, and hot factor
/// f(T) = fg + (1 - fg) / (1 + exp((T - Tg - offset)/width)). The hot factor reproduces published ratios of peel at 125 °C to peel
/// after a float within 0.07; its floor and the loss per melt are judgement: no curve of either was found in print.
/// </summary>
public sealed class BondStrength
{
    private readonly AdhesionParameters _parameters;
    private readonly RatedEstimate<Temperature> _glassTransition;

    /// <summary>Prepares a class.</summary>
    /// <param name="laminate">The class of laminate.</param>
    /// <param name="parameters">Figures of the bond.</param>
    public BondStrength(LaminateLimits laminate, AdhesionParameters parameters)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        ArgumentNullException.ThrowIfNull(parameters);
        _parameters = parameters;
        _glassTransition = laminate.GlassTransition;
    }

    /// <summary>Share of the cold bond that is kept.</summary>
    /// <param name="damageSum">Laminate damage sum D, not negative.</param>
    /// <param name="melts">Number of melts N, not negative.</param>
    /// <param name="lossPerMelt">delta, 0 to 1.</param>
    /// <returns>K, 0 to 1.</returns>
    public static double Kept(double damageSum, double melts, double lossPerMelt) =>
        Math.Max(0, 1 - damageSum) * Math.Pow(1 - lossPerMelt, melts);

    /// <summary>Share of the cold bond that holds at a temperature: low with the lowest floor and Tg, high with the highest.</summary>
    /// <param name="temperature">Temperature of the pad.</param>
    /// <returns>f(T), 0 to 1.</returns>
    public Spread HotFactor(Temperature temperature)
    {
        double celsius = temperature.DegreesCelsius;
        return new Spread(
            At(celsius, _parameters.HotFloor.Low, _glassTransition.Low),
            At(celsius, _parameters.HotFloor.Central, _glassTransition.Central),
            At(celsius, _parameters.HotFloor.High, _glassTransition.High));
    }

    /// <summary>Temperature to which a pad must cool before it may be touched: the wanted share of the cold bond is back even with the
    /// lowest floor and Tg.</summary>
    /// <returns>The temperature.</returns>
    public Temperature TouchableBelow()
    {
        double floor = _parameters.HotFloor.Low;
        double share = (_parameters.TouchableShare.Central - floor) / (1 - floor);
        double aboveTg = _parameters.HotOffset.Central.Kelvins + (_parameters.HotWidth.Central.Kelvins * Math.Log((1 / share) - 1));
        return Temperature.FromDegreesCelsius(_glassTransition.Low.DegreesCelsius + aboveTg);
    }

    private double At(double celsius, double floor, Temperature glassTransition)
    {
        double z = (celsius - glassTransition.DegreesCelsius - _parameters.HotOffset.Central.Kelvins) / _parameters.HotWidth.Central.Kelvins;
        return floor + ((1 - floor) / (1 + Math.Exp(z)));
    }
}

/// <summary>Figures of the copper-to-laminate bond that do not depend on the class of laminate.</summary>
/// <param name="LossPerMelt">Share of the bond lost at each melting of the joint, 0 to 1.</param>
/// <param name="HotFloor">Share of the cold bond that is left far above Tg, 0 to 1.</param>
/// <param name="HotOffset">How far above Tg [K] the fall is half done.</param>
/// <param name="HotWidth">Width of the fall [K], above zero.</param>
/// <param name="LowProfilePeel">Peel strength of low-profile foil, which replaces the class's figure [N/mm].</param>
/// <param name="CapacityScatter">Scatter of pull tests as the standard deviation of the natural logarithm.</param>
/// <param name="TouchableShare">Share of the cold bond at which a cooling pad may be touched again, 0 to 1.</param>
public sealed record AdhesionParameters(
    RatedEstimate<double> LossPerMelt,
    RatedEstimate<double> HotFloor,
    RatedEstimate<TemperatureDelta> HotOffset,
    RatedEstimate<TemperatureDelta> HotWidth,
    RatedEstimate<ForcePerLength> LowProfilePeel,
    RatedEstimate<double> CapacityScatter,
    RatedEstimate<double> TouchableShare);

/// <summary>Roughness of the foil that a pad is made of.</summary>
public enum FoilProfile
{
    /// <summary>Ordinary foil: the peel strength of the laminate's class holds.</summary>
    Standard,

    /// <summary>Low-profile foil, which holds a third to a half as well.</summary>
    LowProfile,
}
