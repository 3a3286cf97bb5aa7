using MathNet.Numerics.RootFinding;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// How much copper a liquid holds in equilibrium with a copper-tin compound, the other elements keeping their ratio. Below the
/// solder's own liquidus this is the metastable continuation.
/// </summary>
internal sealed class CopperSaturation(EquilibriumKernel kernel, double[] others, int copper)
{
    private const double Least = 1e-9;
    private const double Most = 0.4;
    private const int GridPoints = 120;

    /// <summary>Mole fraction of copper and the compound that limits it, or null when none forms.</summary>
    /// <param name="kelvin">Temperature [K].</param>
    internal (double Copper, PhaseModel Compound)? At(double kelvin)
    {
        (double, PhaseModel)? lowest = null;
        foreach (PhaseModel model in kernel.System.Models)
        {
            if (!model.IsStoichiometric || !Array.Exists(model.Element, e => e == copper))
            {
                continue;
            }

            double? saturated = FirstRoot(model, kelvin);
            if (saturated is { } value && (lowest is null || value < lowest.Value.Item1))
            {
                lowest = (value, model);
            }
        }

        return lowest;
    }

    private double? FirstRoot(PhaseModel model, double kelvin)
    {
        double ratio = Math.Pow(Most / Least, 1.0 / GridPoints);
        double low = Least;
        double heightLow = Height(model, kelvin, low);
        for (int i = 0; i < GridPoints; i++)
        {
            double high = low * ratio;
            double heightHigh = Height(model, kelvin, high);
            if (heightLow > 0 && heightHigh <= 0)
            {
                return Math.Exp(Brent.FindRoot(log => Height(model, kelvin, Math.Exp(log)), Math.Log(low), Math.Log(high), 1e-9, 100));
            }

            low = high;
            heightLow = heightHigh;
        }

        return null;
    }

    private double Height(PhaseModel model, double kelvin, double share)
    {
        double[] overall = new double[others.Length];
        for (int e = 0; e < overall.Length; e++)
        {
            overall[e] = e == copper ? share : (1 - share) * others[e];
        }

        Assemblage liquid = new LiquidusSearch(kernel).Liquid(overall, kelvin);
        double[] full = new double[model.Variables];
        Array.Fill(full, 1);
        return kernel.Plane.HeightAt(model, full, liquid.Potentials);
    }
}
