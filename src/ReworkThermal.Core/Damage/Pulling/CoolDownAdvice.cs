using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Pulling;

/// <summary>Says how long to let a pad cool before the next touch, from a cooling history.</summary>
public static class CoolDownAdvice
{
    /// <summary>Reads a cooling history.</summary>
    /// <param name="bond">The bond of the pad's laminate.</param>
    /// <param name="cooling">Temperature of the pad, simulated or measured, from the end of a touch.</param>
    /// <returns>When the pad is below <see cref="BondStrength.TouchableBelow"/> for good.</returns>
    public static CoolDown From(BondStrength bond, TemperatureHistory cooling)
    {
        ArgumentNullException.ThrowIfNull(bond);
        ArgumentNullException.ThrowIfNull(cooling);
        Temperature target = bond.TouchableBelow();
        double limit = target.DegreesCelsius;
        ReadOnlySpan<double> seconds = cooling.Seconds;
        ReadOnlySpan<double> celsius = cooling.Celsius;
        if (celsius[^1] > limit)
        {
            return new CoolDown.NotWithin(target, Duration.FromSeconds(seconds[^1] - seconds[0]), Temperature.FromDegreesCelsius(celsius[^1]));
        }

        for (int i = celsius.Length - 1; i > 0; i--)
        {
            if (celsius[i - 1] > limit)
            {
                double share = (celsius[i - 1] - limit) / (celsius[i - 1] - celsius[i]);
                double at = seconds[i - 1] + (share * (seconds[i] - seconds[i - 1]));
                return new CoolDown.Wait(target, Duration.FromSeconds(at - seconds[0]));
            }
        }

        return new CoolDown.CoolAlready(target);
    }
}
