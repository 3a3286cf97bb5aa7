using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>How heat gets from the leg of a part into its body: from geometry where it is known, stated otherwise.</summary>
public abstract record LegPath
{
    private LegPath()
    {
    }

    /// <summary>Conductance of the path [W/K]; ranges of several inputs add in quadrature of their logarithms.</summary>
    /// <param name="leg">The leg.</param>
    /// <returns>The conductance with its range, low when it is a poor path.</returns>
    public abstract Estimate<double> Conductance(Leg leg);

    /// <summary>The leg is held by plastic: a round leg of the same area in a sleeve, 2 pi k L / ln(1 + 2 s/d) (shape factor of a cylinder; textbook).</summary>
    /// <param name="Conductivity">Conductivity k of the plastic, above zero.</param>
    /// <param name="Length">Length L of leg in the plastic, above zero.</param>
    /// <param name="Wall">Thickness s of plastic around it, above zero.</param>
    public sealed record Plastic(Estimate<ThermalConductivity> Conductivity, Estimate<Length> Length, Estimate<Length> Wall) : LegPath
    {
        /// <inheritdoc/>
        public override Estimate<double> Conductance(Leg leg)
        {
            ArgumentNullException.ThrowIfNull(leg);
            double diameter = leg.Shape.EquivalentDiameter.Meters;
            double Of(ThermalConductivity k, Length length, Length wall) =>
                2 * Math.PI * k.WattsPerMeterKelvin * length.Meters / Math.Log(1 + (2 * wall.Meters / diameter));
            return Combined(
                Of(Conductivity.Central, Length.Central, Wall.Central),
                [Of(Conductivity.Low, Length.Central, Wall.Central), Of(Conductivity.Central, Length.Low, Wall.Central), Of(Conductivity.Central, Length.Central, Wall.High)],
                [Of(Conductivity.High, Length.Central, Wall.Central), Of(Conductivity.Central, Length.High, Wall.Central), Of(Conductivity.Central, Length.Central, Wall.Low)],
                Conductivity.Provenance);
        }
    }

    /// <summary>The leg is one piece with a metal body: a bar of the leg's own metal and section, k A / L.</summary>
    /// <param name="Length">Length L from the body's edge to where the metal widens, above zero.</param>
    public sealed record Metal(Estimate<Length> Length) : LegPath
    {
        /// <inheritdoc/>
        public override Estimate<double> Conductance(Leg leg)
        {
            ArgumentNullException.ThrowIfNull(leg);
            double area = leg.Shape.Area.SquareMeters;
            Estimate<ThermalConductivity> k = leg.Metal.Conductivity;
            double Of(ThermalConductivity conductivity, Length length) => conductivity.WattsPerMeterKelvin * area / length.Meters;
            return Combined(
                Of(k.Central, Length.Central),
                [Of(k.Low, Length.Central), Of(k.Central, Length.High)],
                [Of(k.High, Length.Central), Of(k.Central, Length.Low)],
                Length.Provenance);
        }
    }

    /// <summary>A conductance that somebody states.</summary>
    /// <param name="WattsPerKelvin">The conductance, above zero.</param>
    public sealed record Stated(Estimate<double> WattsPerKelvin) : LegPath
    {
        /// <inheritdoc/>
        public override Estimate<double> Conductance(Leg leg) => WattsPerKelvin;
    }

    private static Estimate<double> Combined(double central, double[] low, double[] high, Provenance origin)
    {
        double Reach(double[] ends) => Math.Sqrt(ends.Sum(e => Math.Log(e / central) * Math.Log(e / central)));
        return new Estimate<double>(
            central,
            central * Math.Exp(-Reach(low)),
            central * Math.Exp(Reach(high)),
            origin);
    }
}
