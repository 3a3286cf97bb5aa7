using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>
/// Stratified samples of independent normal variables: every variable has exactly one sample in each of N slices of equal probability
/// (McKay, Beckman and Conover, Technometrics 21 (1979) 239; from memory).
/// </summary>
internal static class LatinHypercube
{
    // Keeps the lowest slice away from minus infinity.
    private const double Least = 1e-9;

    /// <summary>Draws samples.</summary>
    /// <param name="samples">Number of samples N, above zero.</param>
    /// <param name="variables">Number of variables.</param>
    /// <param name="seed">Seed; the same seed gives the same samples.</param>
    /// <returns>Samples by rows: N rows of standard normal numbers.</returns>
    internal static double[][] Normal(int samples, int variables, ulong seed)
    {
        SplitMix64 random = new(seed);
        double[][] rows = new double[samples][];
        for (int i = 0; i < samples; i++)
        {
            rows[i] = new double[variables];
        }

        int[] slices = new int[samples];
        for (int v = 0; v < variables; v++)
        {
            Shuffle(slices, random);
            for (int i = 0; i < samples; i++)
            {
                rows[i][v] = MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, Math.Max(Least, (slices[i] + random.NextUnit()) / samples));
            }
        }

        return rows;
    }

    private static void Shuffle(int[] slices, SplitMix64 random)
    {
        for (int i = 0; i < slices.Length; i++)
        {
            slices[i] = i;
        }

        for (int i = slices.Length - 1; i > 0; i--)
        {
            int j = random.NextBelow(i + 1);
            (slices[i], slices[j]) = (slices[j], slices[i]);
        }
    }
}
