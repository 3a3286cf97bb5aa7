using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>A factor that is right reproduces the right-hand side, whatever the size, band and split.</summary>
public sealed class HeatFlowBandedCholeskyTests
{
    [Theory]
    [InlineData(1, 1, 0)]
    [InlineData(2, 1, 0)]
    [InlineData(7, 1, 4)]
    [InlineData(30, 5, 9)]
    [InlineData(37, 6, 37)]
    [InlineData(64, 13, 20)]
    [InlineData(120, 26, 61)]
    [InlineData(121, 27, 118)]
    public void Solution_times_matrix_is_the_right_hand_side_also_after_the_tail_changed(int size, int band, int tail)
    {
        Random random = new(size + band);
        double[,] matrix = new double[size, size];
        BandedCholesky solver = new(size, band, tail);
        for (int j = 0; j < size; j++)
        {
            foreach (int i in new[] { j + 1, j + band }.Where(i => i < size))
            {
                matrix[i, j] = matrix[j, i] = -random.NextDouble();
            }
        }

        for (int i = 0; i < size; i++)
        {
            matrix[i, i] = 0.1 + Enumerable.Range(0, size).Where(j => j != i).Sum(j => -matrix[i, j]);
        }

        Load(solver, matrix, 0);
        solver.Factor();
        Check(solver, matrix, random);

        for (int i = solver.TailStart; i < size; i++)
        {
            matrix[i, i] += random.NextDouble() * 50;
        }

        Load(solver, matrix, solver.TailStart);
        solver.FactorTail();
        Check(solver, matrix, random);
    }

    [Fact]
    public void A_matrix_that_is_not_positive_definite_is_an_error()
    {
        BandedCholesky solver = new(2, 1, 0);
        solver.SetColumn(0, 1, 2, 0);
        solver.SetColumn(1, 1, 0, 0);

        Assert.Throws<InvalidOperationException>(solver.Factor);
    }

    private static void Load(BandedCholesky solver, double[,] matrix, int from)
    {
        int size = matrix.GetLength(0);
        double Entry(int row, int column) => row < size ? matrix[row, column] : 0;
        for (int j = from; j < size; j++)
        {
            double outermost = solver.Bandwidth == 1 ? 0 : Entry(j + solver.Bandwidth, j);
            solver.SetColumn(j, matrix[j, j], Entry(j + 1, j), outermost);
        }
    }

    private static void Check(BandedCholesky solver, double[,] matrix, Random random)
    {
        int size = matrix.GetLength(0);
        double[] x = new double[solver.VectorLength];
        double[] b = new double[size];
        for (int i = 0; i < size; i++)
        {
            x[i] = b[i] = random.NextDouble() - 0.5;
        }

        solver.Solve(x);
        for (int i = 0; i < size; i++)
        {
            double row = 0;
            for (int j = 0; j < size; j++)
            {
                row += matrix[i, j] * x[j];
            }

            Assert.Equal(b[i], row, 1e-9);
        }
    }
}
