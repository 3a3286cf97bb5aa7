using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ReworkThermal.Core.Numerics;

/// <summary>
/// Cholesky factor of the symmetric positive-definite matrix of a five-point stencil (diagonal, first and outermost sub-diagonal; the
/// band between fills in), with the option to refactor only its tail.
/// </summary>
/// <remarks>
/// Column k is stored from its diagonal downwards, padded with zeros, so that the loops need no end cases. Four pivots are
/// eliminated together: each vector of a later column is loaded and stored once per four updates, which is what makes short
/// bands fast. The tail (columns from <see cref="TailStart"/>) may change while the head stays: the head's contribution to it is
/// kept, so a refactorisation of the tail alone is exact. Method: Golub and Van Loan, Matrix Computations, section 4.3.5.
/// </remarks>
internal sealed class BandedCholesky
{
    private const int Block = 4;

    private readonly int _paddedSize;
    private readonly int _stride;
    private readonly double[] _diagonal;
    private readonly double[] _first;
    private readonly double[] _outermost;
    private readonly double[] _factor;
    private readonly double[] _inversePivot;
    private readonly double[] _headContribution;

    /// <summary>Creates a zero matrix.</summary>
    /// <param name="size">Number of rows, at least one.</param>
    /// <param name="bandwidth">Number of sub-diagonals, at least one.</param>
    /// <param name="tailStart">First column of the tail; rounded down to a multiple of four. 0 makes everything tail.</param>
    internal BandedCholesky(int size, int bandwidth, int tailStart)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(size, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(bandwidth, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(tailStart);
        Bandwidth = bandwidth;
        TailStart = tailStart / Block * Block;
        _paddedSize = (size + Block - 1) / Block * Block;
        _stride = (bandwidth + 1 + (2 * Block) + 3) / 4 * 4;
        VectorLength = _paddedSize + _stride + Block;
        _diagonal = new double[_paddedSize];
        _diagonal.AsSpan(size).Fill(1);
        _first = new double[_paddedSize];
        _outermost = new double[_paddedSize];
        _factor = new double[(_paddedSize + bandwidth + Block) * _stride];
        _inversePivot = new double[_paddedSize];
        _headContribution = new double[(bandwidth + Block) * _stride];
    }

    /// <summary>Number of sub-diagonals.</summary>
    internal int Bandwidth { get; }

    /// <summary>First column of the tail.</summary>
    internal int TailStart { get; }

    /// <summary>Length a right-hand side must have: the size and some padding.</summary>
    internal int VectorLength { get; }

    /// <summary>Sets one column of the lower triangle: diagonal, first sub-diagonal and outermost sub-diagonal (added when they coincide).</summary>
    internal void SetColumn(int column, double diagonal, double first, double outermost)
    {
        _diagonal[column] = diagonal;
        _first[column] = Bandwidth == 1 ? first + outermost : first;
        _outermost[column] = Bandwidth == 1 ? 0 : outermost;
    }

    /// <summary>Factors the whole matrix.</summary>
    /// <exception cref="InvalidOperationException">The matrix is not positive definite.</exception>
    internal void Factor()
    {
        Load(0);
        Eliminate(0, TailStart);

        // What the head leaves in the first columns of the tail is what they hold now, less what was loaded.
        Span<double> kept = HeadReach();
        kept.CopyTo(_headContribution);
        for (int column = TailStart; column < _paddedSize && column < TailStart + Bandwidth + Block; column++)
        {
            int at = (column - TailStart) * _stride;
            _headContribution[at] -= _diagonal[column];
            _headContribution[at + 1] -= _first[column];
            _headContribution[at + Bandwidth] -= _outermost[column];
        }

        Eliminate(TailStart, _paddedSize);
    }

    /// <summary>Factors the tail again after only tail columns were set.</summary>
    /// <exception cref="InvalidOperationException">The matrix is not positive definite.</exception>
    internal void FactorTail()
    {
        Load(TailStart);
        Span<double> reach = HeadReach();
        for (int i = 0; i < reach.Length; i++)
        {
            reach[i] += _headContribution[i];
        }

        Eliminate(TailStart, _paddedSize);
    }

    /// <summary>Solves A x = b in place.</summary>
    /// <param name="x">Right-hand side on entry, solution on return; <see cref="VectorLength"/> long, zero beyond the rows.</param>
    internal void Solve(double[] x)
    {
        Forward(x, 0);
        Backward(x, 0);
    }

    /// <summary>Solves L y = b in place from a column on, where b is zero before it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Forward(double[] x, int from)
    {
        ref double values = ref MemoryMarshal.GetArrayDataReference(x);
        ref double factor = ref MemoryMarshal.GetArrayDataReference(_factor);
        for (int k = from / Block * Block; k < _paddedSize; k += Block)
        {
            int c0 = k * _stride;
            int c1 = c0 + _stride;
            int c2 = c1 + _stride;
            int c3 = c2 + _stride;
            double x0 = x[k] * _inversePivot[k];
            double x1 = (x[k + 1] - (x0 * _factor[c0 + 1])) * _inversePivot[k + 1];
            double x2 = (x[k + 2] - (x0 * _factor[c0 + 2]) - (x1 * _factor[c1 + 1])) * _inversePivot[k + 2];
            double x3 = (x[k + 3] - (x0 * _factor[c0 + 3]) - (x1 * _factor[c1 + 2]) - (x2 * _factor[c2 + 1])) * _inversePivot[k + 3];
            x[k] = x0;
            x[k + 1] = x1;
            x[k + 2] = x2;
            x[k + 3] = x3;
            Vector256<double> v0 = Vector256.Create(-x0);
            Vector256<double> v1 = Vector256.Create(-x1);
            Vector256<double> v2 = Vector256.Create(-x2);
            Vector256<double> v3 = Vector256.Create(-x3);
            for (int m = 0; m < Bandwidth; m += 4)
            {
                nuint at = (nuint)(k + Block + m);
                Vector256<double> sum = Vector256.LoadUnsafe(ref values, at);
                sum = Vector256.MultiplyAddEstimate(v0, Vector256.LoadUnsafe(ref factor, (nuint)(c0 + 4 + m)), sum);
                sum = Vector256.MultiplyAddEstimate(v1, Vector256.LoadUnsafe(ref factor, (nuint)(c1 + 3 + m)), sum);
                sum = Vector256.MultiplyAddEstimate(v2, Vector256.LoadUnsafe(ref factor, (nuint)(c2 + 2 + m)), sum);
                sum = Vector256.MultiplyAddEstimate(v3, Vector256.LoadUnsafe(ref factor, (nuint)(c3 + 1 + m)), sum);
                sum.StoreUnsafe(ref values, at);
            }
        }
    }

    /// <summary>Solves L^T x = y in place, down to a column.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Backward(double[] x, int downTo)
    {
        ref double values = ref MemoryMarshal.GetArrayDataReference(x);
        ref double factor = ref MemoryMarshal.GetArrayDataReference(_factor);
        for (int k = _paddedSize - Block; k >= downTo / Block * Block; k -= Block)
        {
            int c0 = k * _stride;
            int c1 = c0 + _stride;
            int c2 = c1 + _stride;
            int c3 = c2 + _stride;
            Vector256<double> s0 = Vector256<double>.Zero;
            Vector256<double> s1 = Vector256<double>.Zero;
            Vector256<double> s2 = Vector256<double>.Zero;
            Vector256<double> s3 = Vector256<double>.Zero;
            for (int m = 0; m < Bandwidth; m += 4)
            {
                Vector256<double> v = Vector256.LoadUnsafe(ref values, (nuint)(k + Block + m));
                s0 = Vector256.MultiplyAddEstimate(v, Vector256.LoadUnsafe(ref factor, (nuint)(c0 + 4 + m)), s0);
                s1 = Vector256.MultiplyAddEstimate(v, Vector256.LoadUnsafe(ref factor, (nuint)(c1 + 3 + m)), s1);
                s2 = Vector256.MultiplyAddEstimate(v, Vector256.LoadUnsafe(ref factor, (nuint)(c2 + 2 + m)), s2);
                s3 = Vector256.MultiplyAddEstimate(v, Vector256.LoadUnsafe(ref factor, (nuint)(c3 + 1 + m)), s3);
            }

            double x3 = (x[k + 3] - Vector256.Sum(s3)) * _inversePivot[k + 3];
            double x2 = (x[k + 2] - Vector256.Sum(s2) - (x3 * _factor[c2 + 1])) * _inversePivot[k + 2];
            double x1 = (x[k + 1] - Vector256.Sum(s1) - (x3 * _factor[c1 + 2]) - (x2 * _factor[c1 + 1])) * _inversePivot[k + 1];
            double x0 = (x[k] - Vector256.Sum(s0) - (x3 * _factor[c0 + 3]) - (x2 * _factor[c0 + 2]) - (x1 * _factor[c0 + 1])) * _inversePivot[k];
            x[k] = x0;
            x[k + 1] = x1;
            x[k + 2] = x2;
            x[k + 3] = x3;
        }
    }

    private Span<double> HeadReach()
    {
        int from = TailStart * _stride;
        return _factor.AsSpan(from, Math.Min(_headContribution.Length, _factor.Length - from));
    }

    private void Load(int from)
    {
        _factor.AsSpan(from * _stride).Clear();
        for (int column = from; column < _paddedSize; column++)
        {
            int at = column * _stride;
            _factor[at + Bandwidth] = _outermost[column];
            _factor[at + 1] += _first[column];
            _factor[at] = _diagonal[column];
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Eliminate(int from, int to)
    {
        ref double factor = ref MemoryMarshal.GetArrayDataReference(_factor);
        for (int k = from; k < to; k += Block)
        {
            FactorPanel(k);
            int last = k + Block + Bandwidth - 1;
            for (int c = k + Block; c <= last; c++)
            {
                int o0 = (k * _stride) + c - k;
                int o1 = o0 + _stride - 1;
                int o2 = o1 + _stride - 1;
                int o3 = o2 + _stride - 1;
                Vector256<double> l0 = Vector256.Create(-_factor[o0]);
                Vector256<double> l1 = Vector256.Create(-_factor[o1]);
                Vector256<double> l2 = Vector256.Create(-_factor[o2]);
                Vector256<double> l3 = Vector256.Create(-_factor[o3]);
                int target = c * _stride;
                int length = last - c + 1;
                for (int m = 0; m < length; m += 4)
                {
                    Vector256<double> sum = Vector256.LoadUnsafe(ref factor, (nuint)(target + m));
                    sum = Vector256.MultiplyAddEstimate(l0, Vector256.LoadUnsafe(ref factor, (nuint)(o0 + m)), sum);
                    sum = Vector256.MultiplyAddEstimate(l1, Vector256.LoadUnsafe(ref factor, (nuint)(o1 + m)), sum);
                    sum = Vector256.MultiplyAddEstimate(l2, Vector256.LoadUnsafe(ref factor, (nuint)(o2 + m)), sum);
                    sum = Vector256.MultiplyAddEstimate(l3, Vector256.LoadUnsafe(ref factor, (nuint)(o3 + m)), sum);
                    sum.StoreUnsafe(ref factor, (nuint)(target + m));
                }
            }
        }
    }

    // Four columns by plain left-to-right elimination.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FactorPanel(int k)
    {
        for (int q = 0; q < Block; q++)
        {
            int column = (k + q) * _stride;
            double pivot = _factor[column];
            if (!(pivot > 0))
            {
                throw new InvalidOperationException($"the matrix is not positive definite at row {k + q}");
            }

            double inverse = 1 / Math.Sqrt(pivot);
            _inversePivot[k + q] = inverse;
            Span<double> below = _factor.AsSpan(column + 1, Bandwidth);
            foreach (ref double entry in below)
            {
                entry *= inverse;
            }

            for (int later = q + 1; later < Block; later++)
            {
                int offset = later - q;
                if (offset > Bandwidth)
                {
                    break;
                }

                double multiplier = below[offset - 1];
                if (multiplier == 0)
                {
                    continue;
                }

                int target = (k + later) * _stride;
                for (int m = 0; m + offset <= Bandwidth; m++)
                {
                    _factor[target + m] -= multiplier * below[m + offset - 1];
                }
            }
        }
    }
}
