using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Identities;

public sealed class SeriesBlobTests
{
    [Property]
    public bool Any_measured_series_comes_back_bit_for_bit(NonEmptyArray<NormalFloat> steps, NormalFloat shift)
    {
        double[] celsius = [.. steps.Get.Select(s => Math.Abs(s.Get % 900) + (shift.Get % 100))];
        double[] seconds = [.. steps.Get.Select((s, i) => i + (Math.Abs(s.Get) % 1 / 2))];
        return Same(InterfaceSeries.Measured(new TemperatureHistory(seconds, celsius)));
    }

    [Property]
    public bool Any_decimal_series_comes_back_bit_for_bit_and_small(NonEmptyArray<int> tenths)
    {
        double[] celsius = [.. tenths.Get.Select(t => (t % 5000 / 10.0) + 0)];
        double[] seconds = [.. celsius.Select((_, i) => i / 8.0)];
        if (celsius.Any(c => double.IsNegative(c) || c <= -273))
        {
            celsius = [.. celsius.Select(c => Math.Abs(c))];
        }

        InterfaceSeries series = InterfaceSeries.Measured(new TemperatureHistory(seconds, celsius));
        return Same(series) && SeriesBlob.Pack([series]).Length <= 4 + (6 * celsius.Length);
    }

    [Fact]
    public void Minus_zero_comes_back_as_minus_zero() =>
        Assert.True(Same(InterfaceSeries.Measured(new TemperatureHistory([0, 1, 2], [-0.0, 0.5, -0.0]))));

    [Fact]
    public void A_simulated_touch_of_ten_seconds_takes_under_a_hundred_bytes()
    {
        InterfaceSeries series = InterfaceSeries.Simulated(SampleJobs.Ramp(101));
        Assert.InRange(SeriesBlob.Pack([series]).Length, 10, 99);
        Assert.True(Same(series));
    }

    [Fact]
    public void Several_series_stay_in_order()
    {
        InterfaceSeries[] all = [InterfaceSeries.Simulated(SampleJobs.Ramp(50)), InterfaceSeries.Measured(SampleJobs.Ramp(5)), InterfaceSeries.Simulated(SampleJobs.Ramp(1))];
        List<InterfaceSeries> back = SeriesBlob.Unpack(SeriesBlob.Pack(all));
        Assert.Equal(all.Select(s => s.Origin), back.Select(s => s.Origin));
        Assert.Equal(all.Select(s => s.History.Seconds.Length), back.Select(s => s.History.Seconds.Length));
    }

    [Fact]
    public void Every_shortened_blob_is_refused()
    {
        byte[] bytes = SeriesBlob.Pack([InterfaceSeries.Simulated(SampleJobs.Ramp(101)), InterfaceSeries.Measured(new TemperatureHistory([0.1, 0.3], [1 / 3.0, 2]))]);
        int whole = SeriesBlob.Pack([InterfaceSeries.Simulated(SampleJobs.Ramp(101))]).Length;
        for (int length = 1; length < bytes.Length; length++)
        {
            if (length != whole)
            {
                _ = Assert.Throws<RecordFormatException>(() => SeriesBlob.Unpack(bytes.AsSpan(0, length)));
            }
        }
    }

    private static bool Same(InterfaceSeries series)
    {
        InterfaceSeries back = Assert.Single(SeriesBlob.Unpack(SeriesBlob.Pack([series])));
        return back.Origin == series.Origin
            && back.MaxError.Kelvins == series.MaxError.Kelvins
            && Bits(back.History.Seconds).SequenceEqual(Bits(series.History.Seconds))
            && Bits(back.History.Celsius).SequenceEqual(Bits(series.History.Celsius));
    }

    private static long[] Bits(ReadOnlySpan<double> numbers) => [.. numbers.ToArray().Select(BitConverter.DoubleToInt64Bits)];
}
