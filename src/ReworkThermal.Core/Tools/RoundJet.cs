namespace ReworkThermal.Core.Tools;

/// <summary>
/// Heat transfer of one round jet that meets a flat plate: H. Martin, Advances in Heat Transfer 13 (1977) 1-60, as printed in Incropera
/// et al., chapter 7 (seen in open course notes). Dimensionless; r, D and H in any one unit.
/// </summary>
public static class RoundJet
{
    /// <summary>Least Reynolds number of the correlation.</summary>
    public const double LeastReynolds = 2000;

    /// <summary>Greatest Reynolds number of the correlation.</summary>
    public const double MostReynolds = 400_000;

    /// <summary>Least distance of nozzle and plate over the diameter.</summary>
    public const double LeastDistance = 2;

    /// <summary>Greatest distance of nozzle and plate over the diameter.</summary>
    public const double MostDistance = 12;

    /// <summary>Least radius over the diameter.</summary>
    public const double LeastRadius = 2.5;

    /// <summary>Greatest radius over the diameter.</summary>
    public const double MostRadius = 7.5;

    /// <summary>Mean Nusselt number over the disc of a radius: Nu = F G Pr^0.42.</summary>
    /// <param name="reynolds">Reynolds number V D / nu.</param>
    /// <param name="prandtl">Prandtl number.</param>
    /// <param name="distance">Distance of nozzle and plate over the diameter, H/D.</param>
    /// <param name="radius">Radius over the diameter, r/D.</param>
    /// <returns>h D / k.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The correlation does not cover the case.</exception>
    public static double MeanNusselt(double reynolds, double prandtl, double distance, double radius)
    {
        Check(reynolds, distance, radius);
        double g = (1 / radius) * (1 - (1.1 / radius)) / (1 + (0.1 * (distance - 6) / radius));
        return FlowFactor(reynolds) * g * Math.Pow(prandtl, 0.42);
    }

    /// <summary>Local Nusselt number at a radius: the derivative of r² times the mean, over 2 r.</summary>
    /// <param name="reynolds">Reynolds number V D / nu.</param>
    /// <param name="prandtl">Prandtl number.</param>
    /// <param name="distance">Distance of nozzle and plate over the diameter, H/D.</param>
    /// <param name="radius">Radius over the diameter, r/D.</param>
    /// <returns>h D / k.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The correlation does not cover the case.</exception>
    public static double LocalNusselt(double reynolds, double prandtl, double distance, double radius)
    {
        Check(reynolds, distance, radius);
        double c = 0.1 * (distance - 6);
        double g = ((radius * radius) + (2 * c * radius) - (1.1 * c)) / (2 * radius * (radius + c) * (radius + c));
        return FlowFactor(reynolds) * g * Math.Pow(prandtl, 0.42);
    }

    private static double FlowFactor(double reynolds) => 2 * Math.Sqrt(reynolds) * Math.Sqrt(1 + (0.005 * Math.Pow(reynolds, 0.55)));

    private static void Check(double reynolds, double distance, double radius)
    {
        if (!(reynolds is >= LeastReynolds and <= MostReynolds))
        {
            throw new ArgumentOutOfRangeException(nameof(reynolds), reynolds, "the jet correlation holds for Reynolds numbers from 2000 to 400000");
        }

        if (!(distance is >= LeastDistance and <= MostDistance))
        {
            throw new ArgumentOutOfRangeException(nameof(distance), distance, "the jet correlation holds for distances of 2 to 12 nozzle diameters");
        }

        if (!(radius is >= LeastRadius and <= MostRadius))
        {
            throw new ArgumentOutOfRangeException(nameof(radius), radius, "the jet correlation holds for radii of 2.5 to 7.5 nozzle diameters");
        }
    }
}
