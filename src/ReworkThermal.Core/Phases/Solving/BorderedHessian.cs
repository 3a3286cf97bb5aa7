namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// The Hessian of a Gibbs-energy surface bordered by the sums of the site fractions, one per sublattice. Rows and columns are scaled by
/// the square root of y / share, which makes the diagonal of an ideal solution one, so that traces do not spoil the pivots.
/// </summary>
internal static class BorderedHessian
{
    /// <summary>Fills the matrix and its scale.</summary>
    /// <param name="model">The phase.</param>
    /// <param name="y">Site fractions, above zero.</param>
    /// <param name="hessian">Second derivatives over the variables, row by row.</param>
    /// <param name="scale">Becomes the scale of each variable.</param>
    /// <param name="matrix">Becomes the matrix, row by row: the variables, then the sublattices.</param>
    internal static void Fill(PhaseModel model, ReadOnlySpan<double> y, ReadOnlySpan<double> hessian, Span<double> scale, Span<double> matrix)
    {
        int n = model.Variables;
        int order = n + model.Sublattices;
        matrix.Clear();
        for (int v = 0; v < n; v++)
        {
            scale[v] = Math.Sqrt(y[v] / model.Share[v]);
        }

        for (int v = 0; v < n; v++)
        {
            for (int w = 0; w < n; w++)
            {
                matrix[(v * order) + w] = scale[v] * scale[w] * hessian[(v * n) + w];
            }

            int border = n + model.Sublattice[v];
            matrix[(v * order) + border] = scale[v];
            matrix[(border * order) + v] = scale[v];
        }
    }
}
