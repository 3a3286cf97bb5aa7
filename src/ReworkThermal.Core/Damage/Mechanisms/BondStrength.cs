using ReworkThermal.Core.Damage.Exposures;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>
/// How well copper holds to the laminate: kept share K = max(0, 1 - D) (1 - delta)^((1 - q) N + q M) after N melts with a dose of M standard
/// melts (a standard melt has M = 1 and costs delta, part q of it by its heat) and a damage sum D of what is not in the dose; and hot factor
/// f(T) = fg + (1 - fg) / (1 + exp((T - Tg - offset)/width)). The hot factor reproduces published ratios of peel at 125 °C to peel
/// after a float within 0.07; its floor and the loss per melt are judgement: no curve of either was found in print.
/// </summary>
public sealed class BondStrength
{
    private readonly AdhesionParameters _parameters;
    private readonly double _sumOfStandardMelt;
    private readonly RatedEstimate<Temperature> _glassTransition;

    /// <summary>Prepares a class.</summary>
    /// <param name="laminate">The class of laminate.</param>
    /// <param name="parameters">Figures of the bond.</param>
    /// <param name="kinetics">Delamination of the class: what a standard melt is of its damage sum.</param>
    public BondStrength(LaminateLimits laminate, AdhesionParameters parameters, LaminateKinetics kinetics)
    {
        ArgumentNullException.ThrowIfNull(kinetics);
        ArgumentNullException.ThrowIfNull(laminate);
        ArgumentNullException.ThrowIfNull(parameters);
        _parameters = parameters;
        _glassTransition = laminate.GlassTransition;
        _sumOfStandardMelt = 1 / kinetics.InStandardMelts(1, parameters.StandardTemperature, parameters.StandardTime);
    }

    /// <summary>Share of the cold bond that is kept when a melt costs the same whatever its heat.</summary>
    /// <param name="damageSum">Laminate damage sum D, not negative.</param>
    /// <param name="melts">Number of melts N, not negative.</param>
    /// <param name="lossPerMelt">delta, 0 to 1.</param>
    /// <returns>K, 0 to 1.</returns>
    public static double Kept(double damageSum, double melts, double lossPerMelt) =>
        Kept(damageSum, melts, 0, lossPerMelt, 0);

    /// <summary>Share of the cold bond that is kept when part of a melt's loss goes with its heat.</summary>
    /// <param name="uncovered">Laminate damage sum of heat that is not in the dose already, so that the same heat does not count twice; not negative.</param>
    /// <param name="melts">Number of melts N, not negative.</param>
    /// <param name="dose">Heat of the melts M in standard melts, not negative.</param>
    /// <param name="lossPerMelt">delta of a standard melt, 0 to 1.</param>
    /// <param name="doseShare">q: part of it that goes with the heat, 0 to 1.</param>
    /// <returns>K, 0 to 1.</returns>
    public static double Kept(double uncovered, double melts, double dose, double lossPerMelt, double doseShare) =>
        Math.Max(0, 1 - uncovered) * Math.Pow(1 - lossPerMelt, ((1 - doseShare) * melts) + (doseShare * dose));

    /// <summary>Share of the cold bond that is kept at the centre of all ranges.</summary>
    /// <param name="damageSum">Laminate damage sum D, all heat together.</param>
    /// <param name="melts">Number of melts N.</param>
    /// <param name="dose">Heat of the melts M.</param>
    internal double Central(double damageSum, double melts, MeltDose dose) =>
        At(damageSum, melts, dose, _parameters.LossPerMelt.Central, _parameters.DoseShare.Central);

    /// <summary>Share of the cold bond that a pad has kept: low with its harsh track, high with its mild one.</summary>
    /// <param name="sum">Laminate damage sums.</param>
    /// <param name="state">The pad.</param>
    internal Spread Of(Spread sum, PadDamage state)
    {
        double[] shares = [_parameters.DoseShare.Low, _parameters.DoseShare.Central, _parameters.DoseShare.High];
        return new Spread(
            shares.Min(q => At(sum.High, state.Harsh.Melts, state.Harsh.Dose, _parameters.LossPerMelt.High, q)),
            Central(sum.Central, state.Central.Melts, state.Central.Dose),
            shares.Max(q => At(sum.Low, state.Mild.Melts, state.Mild.Dose, _parameters.LossPerMelt.Low, q)));
    }

    // Where no part of a melt's loss goes with its heat, the dose covers nothing of the damage sum.
    private double At(double damageSum, double melts, MeltDose dose, double lossPerMelt, double doseShare) =>
        Kept(doseShare > 0 ? Math.Max(0, damageSum - (dose.Covered * _sumOfStandardMelt)) : damageSum, melts, dose.Counted, lossPerMelt, doseShare);

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
/// <param name="LossPerMelt">Share of the bond lost at a standard melt of the joint, 0 to 1.</param>
/// <param name="DoseShare">Part of that loss that goes with how hot and how long a melt is, 0 to 1; the rest is the same for each.</param>
/// <param name="StandardTemperature">Temperature of a standard melt: one contact with a factory's wave.</param>
/// <param name="StandardTime">Length of a standard melt, above zero.</param>
/// <param name="MostDose">Most standard melts that the heat of one melt counts as, 1 or more.</param>
/// <param name="HotFloor">Share of the cold bond that is left far above Tg, 0 to 1.</param>
/// <param name="HotOffset">How far above Tg [K] the fall is half done.</param>
/// <param name="HotWidth">Width of the fall [K], above zero.</param>
/// <param name="LowProfilePeel">Peel strength of low-profile foil, which replaces the class's figure [N/mm].</param>
/// <param name="CapacityScatter">Scatter of pull tests as the standard deviation of the natural logarithm.</param>
/// <param name="TouchableShare">Share of the cold bond at which a cooling pad may be touched again, 0 to 1.</param>
public sealed record AdhesionParameters(
    RatedEstimate<double> LossPerMelt,
    RatedEstimate<double> DoseShare,
    Temperature StandardTemperature,
    Duration StandardTime,
    RatedEstimate<double> MostDose,
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
