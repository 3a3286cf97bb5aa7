using ReworkThermal.Core.HeatFlow;

namespace ReworkThermal.Core.Tests.ClosedForms;

/// <summary>Reading a history between its samples, by hand.</summary>
public sealed class TemperatureHistoryTests
{
    // Up from 20 to 120 °C in 4 s, down to 60 °C in 2 s, up to 160 °C in 5 s.
    private static readonly TemperatureHistory _history = new([1, 5, 7, 12], [20, 120, 60, 160]);

    [Theory]
    [InlineData(10, 1.0)]
    [InlineData(20, 1.0)]
    [InlineData(95, 4.0)]
    [InlineData(120, 5.0)]
    [InlineData(140, 11.0)]
    [InlineData(161, null)]
    public void The_first_time_at_a_temperature_is_on_the_line_that_rises_to_it(double celsius, double? seconds)
    {
        Assert.Equal(seconds, _history.FirstAt(celsius));
    }

    [Theory]
    [InlineData(0, 20)]
    [InlineData(2, 45)]
    [InlineData(6, 90)]
    [InlineData(13, 160)]
    public void Between_samples_the_temperature_is_linear_and_beyond_them_constant(double seconds, double celsius) =>
        Assert.Equal(celsius, _history.At(seconds), 12);
}
