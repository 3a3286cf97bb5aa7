using FsCheck;
using FsCheck.Xunit;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Identities.Jobs;

public sealed class InterfaceSeriesProperties
{
    [Property]
    public void A_thinned_series_stays_within_its_stated_error_at_every_original_sample(NonEmptyArray<NormalFloat> jumps, PositiveInt rate, PositiveInt centi)
    {
        double perSecond = 1 + (rate.Get % 500);
        double[] seconds = [.. jumps.Get.Select((_, i) => i / perSecond)];
        double level = 100;
        double[] celsius = [.. jumps.Get.Select(j => level = Math.Clamp(level + (j.Get % 30), 20, 400))];
        TemperatureHistory original = new(seconds, celsius);
        TemperatureDelta error = TemperatureDelta.FromKelvins((centi.Get % 300 / 100.0) + 0.01);
        InterfaceSeries kept = InterfaceSeries.Simulated(original, error);
        Assert.InRange(SeriesThinning.LargestDifference(original, kept.History), 0, error.Kelvins);
        Assert.True(kept.History.Seconds.Length <= original.Seconds.Length);
    }

    [Fact]
    public void A_smooth_heating_curve_keeps_few_samples()
    {
        double[] seconds = [.. Enumerable.Range(0, 1001).Select(i => i * 0.01)];
        double[] celsius = [.. seconds.Select(t => 25 + (210 * (1 - Math.Exp(-t / 2))))];
        InterfaceSeries kept = InterfaceSeries.Simulated(new TemperatureHistory(seconds, celsius));
        Assert.InRange(kept.History.Seconds.Length, 5, 40);
        Assert.Equal(InterfaceSeries.DefaultMaxErrorKelvins, kept.MaxError.Kelvins);
    }

    [Fact]
    public void A_measured_series_is_kept_sample_by_sample()
    {
        TemperatureHistory history = new([0, 0.1, 0.2, 0.3], [20, 20, 20, 20]);
        Assert.Same(history, InterfaceSeries.Measured(history).History);
    }
}
