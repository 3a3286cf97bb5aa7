using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>
/// Contact of a tip with a joint as it wets: h(t) = h_w - (h_w - h_0) exp(-t/tau), from the conductance at touch-down to that of the
/// wetted contact. Judgement, bounded by pressed metals and solder films: no published measurement was found.
/// </summary>
/// <param name="AtTouchDown">Conductance when the tip comes down, above zero.</param>
/// <param name="Wetted">Conductance of the wetted contact, not below the first.</param>
/// <param name="TimeConstant">Time constant of the growth; zero for one that is wetted at once.</param>
/// <param name="WaitsForMelt">Whether it grows only from the moment at which the solder at the tip's face is molten: a dry tip.</param>
public sealed record ContactGrowth(HeatTransferCoefficient AtTouchDown, HeatTransferCoefficient Wetted, Duration TimeConstant, bool WaitsForMelt)
{
    /// <summary>A contact that does not change.</summary>
    /// <param name="conductance">Its conductance, above zero.</param>
    /// <returns>The contact.</returns>
    public static ContactGrowth Steady(HeatTransferCoefficient conductance) => new(conductance, conductance, Duration.Zero, WaitsForMelt: false);

    /// <summary>Conductance some time after the growth began [W/m2K]; that at touch-down before it.</summary>
    /// <param name="seconds">Time since the growth began [s]; below zero before it.</param>
    internal double At(double seconds)
    {
        double first = AtTouchDown.WattsPerSquareMeterKelvin;
        double last = Wetted.WattsPerSquareMeterKelvin;
        double tau = TimeConstant.Seconds;
        return seconds <= 0 && (tau > 0 || WaitsForMelt) ? first
            : tau <= 0 ? last
            : last - ((last - first) * Math.Exp(-seconds / tau));
    }
}
