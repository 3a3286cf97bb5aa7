namespace ReworkThermal.Core.Numerics;

/// <summary>
/// Solves small dense linear systems in place, without allocating: Gaussian elimination with row scaling and partial pivoting.
/// MathNet's dense solver allocates a matrix and a factorisation per call, which dominates the cost of systems of order 2 to 16.
/// </summary>
internal static class SmallDenseSystem
{
    /// <summary>Smallest scaled pivot taken as non-zero.</summary>
    private const double SmallestPivot = 1e-14;

    /// <summary>Solves A X = B in place.</summary>
    /// <param name="matrix">A, order x order, row by row with stride <paramref name="order"/>; destroyed.</param>
    /// <param name="right">B, order x columns, row by row; becomes X.</param>
    /// <param name="order">Number of unknowns.</param>
    /// <param name="columns">Number of right-hand sides.</param>
    /// <returns>Whether the matrix is regular within rounding.</returns>
    internal static bool TrySolve(Span<double> matrix, Span<double> right, int order, int columns)
    {
        for (int row = 0; row < order; row++)
        {
            double largest = 0;
            for (int column = 0; column < order; column++)
            {
                largest = Math.Max(largest, Math.Abs(matrix[(row * order) + column]));
            }

            if (!(largest > 0) || !double.IsFinite(largest))
            {
                return false;
            }

            ScaleRow(matrix.Slice(row * order, order), 1 / largest);
            ScaleRow(right.Slice(row * columns, columns), 1 / largest);
        }

        for (int step = 0; step < order; step++)
        {
            int pivotRow = step;
            for (int row = step + 1; row < order; row++)
            {
                if (Math.Abs(matrix[(row * order) + step]) > Math.Abs(matrix[(pivotRow * order) + step]))
                {
                    pivotRow = row;
                }
            }

            double pivot = matrix[(pivotRow * order) + step];
            if (!(Math.Abs(pivot) > SmallestPivot))
            {
                return false;
            }

            if (pivotRow != step)
            {
                SwapRows(matrix, pivotRow, step, order);
                SwapRows(right, pivotRow, step, columns);
            }

            Eliminate(matrix, right, step, order, columns);
        }

        for (int row = order - 1; row >= 0; row--)
        {
            for (int column = 0; column < columns; column++)
            {
                double sum = right[(row * columns) + column];
                for (int k = row + 1; k < order; k++)
                {
                    sum -= matrix[(row * order) + k] * right[(k * columns) + column];
                }

                right[(row * columns) + column] = sum / matrix[(row * order) + row];
            }
        }

        return true;
    }

    private static void Eliminate(Span<double> matrix, Span<double> right, int step, int order, int columns)
    {
        Span<double> source = matrix.Slice(step * order, order);
        double pivot = source[step];
        for (int row = step + 1; row < order; row++)
        {
            Span<double> target = matrix.Slice(row * order, order);
            double factor = target[step] / pivot;
            if (factor == 0)
            {
                continue;
            }

            for (int k = step + 1; k < order; k++)
            {
                target[k] -= factor * source[k];
            }

            for (int k = 0; k < columns; k++)
            {
                right[(row * columns) + k] -= factor * right[(step * columns) + k];
            }
        }
    }

    private static void ScaleRow(Span<double> row, double factor)
    {
        foreach (ref double entry in row)
        {
            entry *= factor;
        }
    }

    private static void SwapRows(Span<double> matrix, int first, int second, int width)
    {
        for (int k = 0; k < width; k++)
        {
            (matrix[(first * width) + k], matrix[(second * width) + k]) = (matrix[(second * width) + k], matrix[(first * width) + k]);
        }
    }
}
