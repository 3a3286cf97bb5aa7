using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>
/// Steady warming of a round copper wire by its current. Upper picture: no conduction along the wire and no radiation, only natural
/// convection from the bare conductor. Lower picture: the one-dimensional fin equation k A θ'' = g θ − q0 − q1 θ with both ends at
/// ambient, g from convection and radiation of the insulated surface at the mid-length temperature, and q1 from the rise of resistance.
/// </summary>
public static class WireHeating
{
    /// <summary>Thermal conductivity of copper near room temperature [W/mK] (Copper Development Association: 394 at 20 °C, rounded, from memory).</summary>
    private const double ConductivityWPerMK = 390;

    /// <summary>Finds the range of the steady temperature rise.</summary>
    /// <param name="gauge">The conductor.</param>
    /// <param name="length">Length between the soldered ends, above zero.</param>
    /// <param name="wall">Thickness of the insulation, zero or more.</param>
    /// <param name="emissivity">Emissivity of the surface, 0 to 1.</param>
    /// <param name="current">Current, zero or more.</param>
    /// <param name="ambient">Temperature of air and board, −50 to 300 °C.</param>
    /// <returns>The range, or that the wire melts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static WireWarming Steady(WireGauge gauge, Length length, Length wall, double emissivity, ElectricCurrent current, Temperature ambient)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length.Meters, nameof(length));
        ArgumentOutOfRangeException.ThrowIfNegative(wall.Meters, nameof(wall));
        ArgumentOutOfRangeException.ThrowIfNegative(current.Amperes, nameof(current));
        ArgumentOutOfRangeException.ThrowIfNegative(emissivity);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(emissivity, 1);
        double ambientC = ambient.DegreesCelsius;
        if (ambientC is < -50 or > 300)
        {
            throw new ArgumentOutOfRangeException(nameof(ambient), ambientC, "must lie between -50 and 300 °C");
        }

        Wire wire = new(gauge.Diameter.Meters, gauge.Diameter.Meters + (2 * wall.Meters), emissivity, current.Amperes, ambientC);
        double? high = LongWire(wire);
        double? low = CooledEnds(wire, length.Meters);
        return (low, high) switch
        {
            (double l, double h) => new WireWarming.Settles(TemperatureDelta.FromKelvins(Math.Min(l, h)), TemperatureDelta.FromKelvins(h)),
            (double l, null) => new WireWarming.Doubtful(TemperatureDelta.FromKelvins(l)),
            (null, _) => new WireWarming.Melts(),
        };
    }

    /// <summary>Rise of a long bare wire [K]: the lowest at which heat given off equals heat made, or null when there is none below melting.</summary>
    private static double? LongWire(Wire wire) => LowestBalance(wire, rise =>
        (Math.PI * wire.DiameterM * StillAir.Coefficient(wire.DiameterM, wire.AmbientK + rise, wire.AmbientK) * rise) - wire.HeatWPerM(rise));

    /// <summary>Rise at mid-length with both ends at ambient [K], or null when there is none below melting.</summary>
    private static double? CooledEnds(Wire wire, double lengthM)
    {
        double areaM2 = Math.PI / 4 * wire.DiameterM * wire.DiameterM;
        double made = wire.HeatWPerM(0);
        double madePerK = wire.HeatWPerM(1) - made;
        return LowestBalance(wire, rise =>
        {
            double lost = Math.PI * wire.OuterM * (StillAir.Coefficient(wire.OuterM, wire.AmbientK + rise, wire.AmbientK) + Radiation(wire, rise));
            double limit = CopperConductor.MeltingC - wire.AmbientC;
            return rise - Math.Min(2 * limit, MidRise(lost - madePerK, made, ConductivityWPerMK * areaM2, lengthM) ?? double.PositiveInfinity);
        });
    }

    /// <summary>Lowest rise at which a surplus, negative at zero, becomes zero [K]; null when it does not below the melting point.</summary>
    private static double? LowestBalance(Wire wire, Func<double, double> surplus)
    {
        const int steps = 400;
        if (wire.CurrentA == 0)
        {
            return 0;
        }

        double limit = CopperConductor.MeltingC - wire.AmbientC;
        double below = 0;
        for (int i = 1; i <= steps; i++)
        {
            // Finer near zero, where small currents settle.
            double rise = limit * Math.Pow(i / (double)steps, 3);
            if (surplus(rise) >= 0)
            {
                return MathNet.Numerics.RootFinding.Bisection.FindRoot(surplus, below, rise, 1e-9, 200);
            }

            below = rise;
        }

        return null;
    }

    /// <summary>Solution of k A θ'' = g θ − q0 at mid-length with θ = 0 at both ends; g may be negative (runaway beyond a quarter wave).</summary>
    private static double? MidRise(double g, double q0, double stiffness, double lengthM)
    {
        double number = Math.Abs(g) * lengthM * lengthM / (4 * stiffness);
        double parabola = q0 * lengthM * lengthM / (8 * stiffness);
        if (number < 1e-8)
        {
            return parabola;
        }

        double root = Math.Sqrt(number);
        return g > 0 ? q0 / g * (1 - (1 / Math.Cosh(root)))
            : root < Math.PI / 2 ? q0 / -g * ((1 / Math.Cos(root)) - 1)
            : null;
    }

    private static double Radiation(Wire wire, double rise)
    {
        double ambientK = wire.AmbientK;
        double wireK = ambientK + rise;
        return wire.Emissivity * PhysicalConstants.StefanBoltzmann * ((wireK * wireK) + (ambientK * ambientK)) * (wireK + ambientK);
    }

    private sealed record Wire(double DiameterM, double OuterM, double Emissivity, double CurrentA, double AmbientC)
    {
        internal double AmbientK => AmbientC + 273.15;

        internal double HeatWPerM(double rise) =>
            CurrentA * CurrentA * CopperConductor.ResistivityAt(AmbientC + rise) / (Math.PI / 4 * DiameterM * DiameterM);
    }
}
