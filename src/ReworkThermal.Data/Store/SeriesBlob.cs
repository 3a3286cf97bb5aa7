using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.Data.Store;

/// <summary>
/// Temperature series as bytes, without loss. When all numbers of a series are decimals of few places, which thinned and most
/// measured series are, they are kept as differences of whole numbers, one to three bytes each; otherwise as 64-bit numbers.
/// </summary>
/// <remarks>
/// One series: a flag byte (bit 0: measured, bit 1: 64-bit numbers); for a simulated series its error in kelvins, 64-bit; the number
/// of samples as a varint; then either two bytes with the decimal places of times and temperatures and all times and all
/// temperatures as zigzag varints of differences, or all times and all temperatures as 64-bit little-endian numbers.
/// </remarks>
internal static class SeriesBlob
{
    private const byte MeasuredFlag = 1;
    private const byte WideFlag = 2;
    private const int MostPlaces = 9;
    private const long MostScaled = 1L << 52;

    internal static byte[] Pack(IReadOnlyList<InterfaceSeries> all)
    {
        ByteSink sink = new();
        foreach (InterfaceSeries series in all)
        {
            Pack(series, sink);
        }

        return sink.ToArray();
    }

    internal static List<InterfaceSeries> Unpack(ReadOnlySpan<byte> bytes)
    {
        ByteSource source = new(bytes);
        List<InterfaceSeries> all = [];
        while (!source.AtEnd)
        {
            all.Add(Unpack(ref source));
        }

        return all;
    }

    private static void Pack(InterfaceSeries series, ByteSink sink)
    {
        ReadOnlySpan<double> seconds = series.History.Seconds;
        ReadOnlySpan<double> celsius = series.History.Celsius;
        int timePlaces = Places(seconds);
        int temperaturePlaces = Places(celsius);
        bool wide = timePlaces < 0 || temperaturePlaces < 0;
        bool measured = series.Origin == SeriesOrigin.Measured;
        sink.Byte((byte)((measured ? MeasuredFlag : 0) | (wide ? WideFlag : 0)));
        if (!measured)
        {
            sink.Wide(series.MaxError.Kelvins);
        }

        sink.Varint((ulong)seconds.Length);
        if (wide)
        {
            sink.Wide(seconds);
            sink.Wide(celsius);
            return;
        }

        sink.Byte((byte)timePlaces);
        sink.Byte((byte)temperaturePlaces);
        Differences(seconds, timePlaces, sink);
        Differences(celsius, temperaturePlaces, sink);
    }

    private static InterfaceSeries Unpack(ref ByteSource source)
    {
        byte flags = source.Byte();
        bool measured = (flags & MeasuredFlag) != 0;
        double error = measured ? 0 : source.Wide();
        int count = source.Count();
        double[] seconds = new double[count];
        double[] celsius = new double[count];
        if ((flags & WideFlag) != 0)
        {
            source.Wide(seconds);
            source.Wide(celsius);
        }
        else
        {
            int timePlaces = source.Byte();
            int temperaturePlaces = source.Byte();
            Sums(ref source, seconds, timePlaces);
            Sums(ref source, celsius, temperaturePlaces);
        }

        try
        {
            return InterfaceSeries.Restore(
                measured ? SeriesOrigin.Measured : SeriesOrigin.Simulated,
                new TemperatureHistory(seconds, celsius),
                TemperatureDelta.FromKelvins(error));
        }
        catch (ArgumentException problem)
        {
            throw new RecordFormatException("a temperature series is damaged: " + problem.Message, problem);
        }
    }

    /// <summary>Fewest decimal places that give every number back exactly, or -1.</summary>
    private static int Places(ReadOnlySpan<double> numbers)
    {
        for (int places = 0; places <= MostPlaces; places++)
        {
            double scale = Scale(places);
            bool exact = true;
            foreach (double number in numbers)
            {
                double scaled = Math.Round(number * scale);
                // Through a whole number, as it will be kept: minus zero has none.
                bool same = Math.Abs(scaled) < MostScaled
                    && BitConverter.DoubleToInt64Bits((long)scaled / scale) == BitConverter.DoubleToInt64Bits(number);
                if (!same)
                {
                    exact = false;
                    break;
                }
            }

            if (exact)
            {
                return places;
            }
        }

        return -1;
    }

    private static double Scale(int places) => places switch
    {
        0 => 1,
        1 => 1e1,
        2 => 1e2,
        3 => 1e3,
        4 => 1e4,
        5 => 1e5,
        6 => 1e6,
        7 => 1e7,
        8 => 1e8,
        9 => 1e9,
        _ => throw new RecordFormatException("a temperature series has an unknown number of decimal places"),
    };

    private static void Differences(ReadOnlySpan<double> numbers, int places, ByteSink sink)
    {
        double scale = Scale(places);
        long last = 0;
        foreach (double number in numbers)
        {
            long scaled = (long)Math.Round(number * scale);
            long difference = scaled - last;
            sink.Varint((ulong)((difference << 1) ^ (difference >> 63)));
            last = scaled;
        }
    }

    private static void Sums(ref ByteSource source, Span<double> numbers, int places)
    {
        double scale = Scale(places);
        long last = 0;
        for (int i = 0; i < numbers.Length; i++)
        {
            ulong zigzag = source.Varint();
            last += (long)(zigzag >> 1) ^ -(long)(zigzag & 1);
            numbers[i] = last / scale;
        }
    }
}
