using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ReworkThermal.Core.Numerics;

/// <summary>Short loops over dense vectors, four lanes at a time. Vectors must be readable up to the next multiple of four.</summary>
internal static class Dense
{
    /// <summary>Sum of products from a place on.</summary>
    internal static double Dot(double[] a, double[] b, int from, int to)
    {
        ref double x = ref MemoryMarshal.GetArrayDataReference(a);
        ref double y = ref MemoryMarshal.GetArrayDataReference(b);
        Vector256<double> sum = Vector256<double>.Zero;
        int i = from;
        for (; i + 4 <= to; i += 4)
        {
            sum = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref x, (nuint)i), Vector256.LoadUnsafe(ref y, (nuint)i), sum);
        }

        double total = Vector256.Sum(sum);
        for (; i < to; i++)
        {
            total += a[i] * b[i];
        }

        return total;
    }

    /// <summary>Adds a multiple of one vector to another: y += factor x.</summary>
    internal static void AddScaled(double factor, double[] x, double[] y, int from, int to)
    {
        ref double source = ref MemoryMarshal.GetArrayDataReference(x);
        ref double target = ref MemoryMarshal.GetArrayDataReference(y);
        Vector256<double> scale = Vector256.Create(factor);
        int i = from;
        for (; i + 4 <= to; i += 4)
        {
            Vector256.MultiplyAddEstimate(scale, Vector256.LoadUnsafe(ref source, (nuint)i), Vector256.LoadUnsafe(ref target, (nuint)i)).StoreUnsafe(ref target, (nuint)i);
        }

        for (; i < to; i++)
        {
            y[i] += factor * x[i];
        }
    }

    /// <summary>Elementwise y += factor a x.</summary>
    internal static void AddProduct(double factor, double[] a, double[] x, double[] y, int to)
    {
        Vector256<double> scale = Vector256.Create(factor);
        ref double first = ref MemoryMarshal.GetArrayDataReference(a);
        ref double second = ref MemoryMarshal.GetArrayDataReference(x);
        ref double target = ref MemoryMarshal.GetArrayDataReference(y);
        for (int i = 0; i < to; i += 4)
        {
            Vector256.MultiplyAddEstimate(scale * Vector256.LoadUnsafe(ref first, (nuint)i), Vector256.LoadUnsafe(ref second, (nuint)i), Vector256.LoadUnsafe(ref target, (nuint)i)).StoreUnsafe(ref target, (nuint)i);
        }
    }

    /// <summary>Sum of the sizes of all entries.</summary>
    internal static double SumOfSizes(double[] x, int to)
    {
        ref double source = ref MemoryMarshal.GetArrayDataReference(x);
        Vector256<double> sum = Vector256<double>.Zero;
        int i = 0;
        for (; i + 4 <= to; i += 4)
        {
            sum += Vector256.Abs(Vector256.LoadUnsafe(ref source, (nuint)i));
        }

        double total = Vector256.Sum(sum);
        for (; i < to; i++)
        {
            total += Math.Abs(x[i]);
        }

        return total;
    }

    /// <summary>Residual r = (known - held) scale + rates; returns the largest |r| weight.</summary>
    internal static double Residual(double[] known, double[] held, double scale, double[] rates, double[] weight, double[] residual, int to)
    {
        ref double k = ref MemoryMarshal.GetArrayDataReference(known);
        ref double h = ref MemoryMarshal.GetArrayDataReference(held);
        ref double f = ref MemoryMarshal.GetArrayDataReference(rates);
        ref double w = ref MemoryMarshal.GetArrayDataReference(weight);
        ref double r = ref MemoryMarshal.GetArrayDataReference(residual);
        Vector256<double> factor = Vector256.Create(scale);
        Vector256<double> largest = Vector256<double>.Zero;
        for (int i = 0; i < to; i += 4)
        {
            Vector256<double> difference = Vector256.LoadUnsafe(ref k, (nuint)i) - Vector256.LoadUnsafe(ref h, (nuint)i);
            Vector256<double> miss = Vector256.MultiplyAddEstimate(difference, factor, Vector256.LoadUnsafe(ref f, (nuint)i));
            miss.StoreUnsafe(ref r, (nuint)i);
            largest = Vector256.Max(largest, Vector256.Abs(miss) * Vector256.LoadUnsafe(ref w, (nuint)i));
        }

        double most = Math.Max(largest[0], largest[1]);
        return Math.Max(most, Math.Max(largest[2], largest[3]));
    }
}
