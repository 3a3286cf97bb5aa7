namespace ReworkThermal.Core.Numerics;

/// <summary>Symmetric positive-definite systems of a few unknowns, in place and without allocation.</summary>
internal static class SmallSymmetricSystem
{
    /// <summary>Solves A x = b by Cholesky's method.</summary>
    /// <param name="lower">Lower triangle of A; holds its factor on return.</param>
    /// <param name="x">Right-hand side on entry, solution on return.</param>
    /// <exception cref="InvalidOperationException">The matrix is not positive definite.</exception>
    internal static void Solve(double[,] lower, double[] x)
    {
        for (int j = 0; j < x.Length; j++)
        {
            double pivot = lower[j, j];
            for (int k = 0; k < j; k++)
            {
                pivot -= lower[j, k] * lower[j, k];
            }

            if (!(pivot > 0))
            {
                throw new InvalidOperationException("the matrix is not positive definite");
            }

            double root = Math.Sqrt(pivot);
            lower[j, j] = root;
            for (int i = j + 1; i < x.Length; i++)
            {
                double sum = lower[i, j];
                for (int k = 0; k < j; k++)
                {
                    sum -= lower[i, k] * lower[j, k];
                }

                lower[i, j] = sum / root;
            }

            for (int k = 0; k < j; k++)
            {
                x[j] -= lower[j, k] * x[k];
            }

            x[j] /= root;
        }

        for (int j = x.Length - 1; j >= 0; j--)
        {
            for (int k = j + 1; k < x.Length; k++)
            {
                x[j] -= lower[k, j] * x[k];
            }

            x[j] /= lower[j, j];
        }
    }
}
