namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// The temperature at which the first solid forms from a liquid: the highest temperature at which any solid touches the tangent
/// plane of the liquid. Newton's method in temperature, with the exact entropy difference as slope.
/// </summary>
internal sealed class LiquidusSearch(EquilibriumKernel kernel)
{
    private const int MostIterations = 80;
    private const int PatientIterations = 25;

    // Above the liquidus of most solders; Newton's method comes down from there in a few rounds [K].
    private const double StartKelvin = 700;

    // Where a path starts whose liquid separates in two on its way down: ten kelvins within the data, which end at 1700 K.
    private const double TopKelvin = 1690;

    /// <summary>Finds the liquidus of a homogeneous liquid.</summary>
    /// <param name="overall">Mole fractions, all above zero.</param>
    /// <param name="basins">Receives every basin over the liquid's plane at the liquidus.</param>
    /// <returns>The liquid with the first solid (amount 0), or null when the search did not converge.</returns>
    internal Assemblage? Find(double[] overall, BasinSet basins)
    {
        double kelvin = StartKelvin;
        double[] slopes = new double[overall.Length];
        bool renew = true;
        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            Assemblage liquid = Liquid(overall, kelvin, slopes);
            if (renew)
            {
                basins.Renew(kelvin, liquid.Potentials);
            }
            else
            {
                basins.Follow(kelvin, liquid.Potentials);
            }

            (double next, Basin? first) = NextTemperature(basins, kelvin, slopes);
            if (first is null)
            {
                return null;
            }

            double change = Math.Abs(next - kelvin) / kelvin;
            kelvin = Math.Clamp(next, Math.Max(0.7 * kelvin, 200), Math.Min(1.4 * kelvin, 3000));
            // At the melting point of an element the published functions jump by some 0.01 J/mol, so that no exact root may exist.
            double settled = iteration < PatientIterations ? 1e-10 : 3e-6;
            if (change < settled && !renew)
            {
                renew = true;
                continue;
            }

            if (change < 10 * settled && renew)
            {
                liquid.Phases.Add(new PhaseState(first.Model, first.Y, 0));
                return liquid;
            }

            renew = change > 0.05;
        }

        return null;
    }

    /// <summary>
    /// Where to start on the way down: at the liquidus, or at the top of the data when the liquid itself separates in two there.
    /// </summary>
    /// <param name="overall">Mole fractions, all above zero.</param>
    /// <param name="basins">Receives every basin at the start.</param>
    internal PathStart Begin(double[] overall, BasinSet basins)
    {
        if (Find(overall, basins) is not { } first)
        {
            return new PathStart.Failed("the liquidus search did not converge");
        }

        if (!SeparatesInTwo(basins))
        {
            PhaseState solid = first.Phases[^1];
            first.Phases.RemoveAt(first.Phases.Count - 1);
            return new PathStart.AtLiquidus(first, solid);
        }

        Assemblage top = Liquid(overall, TopKelvin);
        basins.Renew(TopKelvin, top.Potentials);
        return SeparatesInTwo(basins)
            ? new PathStart.Failed("the liquid is not one phase at the highest temperature of the data")
            : new PathStart.AtTop(top);
    }

    private static bool SeparatesInTwo(BasinSet basins) => basins.All.Any(b => b.Model.IsLiquid && b.Height < -5e-8);

    /// <summary>The liquid alone at a temperature, with its chemical potentials.</summary>
    internal Assemblage Liquid(double[] overall, double kelvin, double[]? slopes = null)
    {
        kernel.Surfaces.SetTemperature(kelvin);
        PhaseModel model = kernel.System.Models[kernel.System.Liquid];
        double[] y = new double[model.Variables];
        for (int v = 0; v < y.Length; v++)
        {
            y[v] = overall[model.Element[v]];
        }

        PhaseState state = new(model, y, 1);
        double[] potentials = new double[overall.Length];
        double[] gradient = new double[y.Length];
        double g = kernel.Surfaces.Evaluate(model, y, gradient, []);
        FillPartials(model, y, g, gradient, potentials);
        if (slopes is not null)
        {
            double slope = kernel.Surfaces.EvaluateSlope(model, y, gradient);
            FillPartials(model, y, slope, gradient, slopes);
        }

        return new Assemblage(kelvin, [state], potentials);
    }

    private static void FillPartials(PhaseModel model, double[] y, double value, double[] gradient, double[] partials)
    {
        double mean = 0;
        for (int v = 0; v < y.Length; v++)
        {
            mean += y[v] * gradient[v];
        }

        for (int v = 0; v < y.Length; v++)
        {
            partials[model.Element[v]] = value + gradient[v] - mean;
        }
    }

    private (double Next, Basin? First) NextTemperature(BasinSet basins, double kelvin, double[] slopes)
    {
        double next = 0;
        Basin? first = null;
        double[] x = new double[slopes.Length];
        double[] gradient = new double[TangentPlane.MostVariables];
        foreach (Basin basin in basins.All)
        {
            if (basin.Model.IsLiquid)
            {
                continue;
            }

            basin.Model.Composition(basin.Y, x);
            double slope = kernel.Surfaces.EvaluateSlope(basin.Model, basin.Y, gradient.AsSpan(0, basin.Model.Variables));
            for (int e = 0; e < x.Length; e++)
            {
                slope -= x[e] * slopes[e];
            }

            double estimate = slope > 0.05 ? kelvin * (1 - (basin.Height / slope)) : basin.Height < 0 ? kelvin * 1.2 : 0;
            if (estimate > next)
            {
                next = estimate;
                first = basin;
            }
        }

        return (next, first);
    }
}
