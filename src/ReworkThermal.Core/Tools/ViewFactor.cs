namespace ReworkThermal.Core.Tools;

/// <summary>View factors between parallel faces (Incropera et al., table 13.2; Howell, A Catalog of Radiation Heat Transfer, C-11, C-41).</summary>
public static class ViewFactor
{
    /// <summary>From one of two coaxial discs to the other.</summary>
    /// <param name="radius">Radius of the first disc, above zero.</param>
    /// <param name="otherRadius">Radius of the other disc, above zero, in the same unit.</param>
    /// <param name="gap">Distance, above zero, in the same unit.</param>
    /// <returns>Share of what leaves the first disc that meets the other, 0 to 1.</returns>
    public static double CoaxialDiscs(double radius, double otherRadius, double gap)
    {
        double r1 = radius / gap;
        double r2 = otherRadius / gap;
        double s = 1 + ((1 + (r2 * r2)) / (r1 * r1));
        double ratio = r2 / r1;
        return 0.5 * (s - Math.Sqrt((s * s) - (4 * ratio * ratio)));
    }

    /// <summary>Between two equal rectangles, one above the other.</summary>
    /// <param name="width">One side, above zero.</param>
    /// <param name="depth">Other side, above zero, in the same unit.</param>
    /// <param name="gap">Distance, above zero, in the same unit.</param>
    /// <returns>Share of what leaves one that meets the other, 0 to 1.</returns>
    public static double AlignedRectangles(double width, double depth, double gap)
    {
        double x = width / gap;
        double y = depth / gap;
        double x1 = Math.Sqrt(1 + (x * x));
        double y1 = Math.Sqrt(1 + (y * y));
        double logarithm = 0.5 * Math.Log(x1 * x1 * y1 * y1 / (1 + (x * x) + (y * y)));
        double arcs = (x * y1 * Math.Atan(x / y1)) + (y * x1 * Math.Atan(y / x1)) - (x * Math.Atan(x)) - (y * Math.Atan(y));
        return 2 / (Math.PI * x * y) * (logarithm + arcs);
    }
}
