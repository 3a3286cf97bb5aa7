namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// The temperature at which one given solid, at its best composition, touches the tangent plane of a liquid of given composition,
/// whether or not another solid forms before it.
/// </summary>
internal sealed class TouchSearch(EquilibriumKernel kernel)
{
    private const int MostIterations = 60;

    /// <summary>Finds the temperature [K], or null when there is none near the start.</summary>
    /// <param name="solid">The solid phase.</param>
    /// <param name="overall">Mole fractions of the liquid, all above zero.</param>
    /// <param name="start">Where to start [K].</param>
    internal double? Kelvin(PhaseModel solid, double[] overall, double start)
    {
        LiquidusSearch liquids = new(kernel);
        double[] slopes = new double[overall.Length];
        double[] x = new double[overall.Length];
        double[] gradient = new double[solid.Variables];
        double kelvin = start;
        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            Assemblage liquid = liquids.Liquid(overall, kelvin, slopes);
            Basin deepest = kernel.Search.Basins(solid, liquid.Potentials, double.PositiveInfinity).MinBy(b => b.Height)!;
            solid.Composition(deepest.Y, x);
            double slope = kernel.Surfaces.EvaluateSlope(solid, deepest.Y, gradient);
            for (int e = 0; e < x.Length; e++)
            {
                slope -= x[e] * slopes[e];
            }

            if (!(slope > 0.05))
            {
                return null;
            }

            double next = Math.Clamp(kelvin * (1 - (deepest.Height / slope)), 0.8 * kelvin, 1.25 * kelvin);
            if (Math.Abs(next - kelvin) < 1e-8 * kelvin)
            {
                return next;
            }

            kelvin = next;
        }

        return null;
    }
}
