using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Data.Measurements;

namespace ReworkThermal.Data.Tests.Measurements;

public sealed class SeriesCsvTests
{
    [Fact]
    public void Samples_are_read_as_they_stand()
    {
        TemperatureHistory history = SeriesCsv.Read("place,temperature_c,time_s\r\npad,24.9,0\r\npad,180.25,1.5\r\n", "t.csv");
        Assert.Equal([0, 1.5], history.Seconds.ToArray());
        Assert.Equal([24.9, 180.25], history.Celsius.ToArray());
    }

    [Theory]
    [InlineData("", "t.csv, line 1: must have a row of column names")]
    [InlineData("time_s,temperature_c\n", "at least one sample")]
    [InlineData("time,temperature_c\n0,20\n", "with time_s and temperature_c")]
    [InlineData("time_s,temperature_c\n0,hot\n", "t.csv, line 2, temperature_c: must be a number")]
    [InlineData("time_s,temperature_c\n0,20\n0,21\n", "t.csv, line 3, time_s: must be zero or more and rise")]
    [InlineData("time_s,temperature_c\n-1,20\n", "line 2, time_s")]
    [InlineData("time_s,temperature_c\n0,-300\n", "absolute zero")]
    [InlineData("time_s,temperature_c\n0\n", "line 2, temperature_c: must be a number with a decimal point; got ''")]
    public void A_series_that_is_not_in_order_is_refused_with_the_place(string text, string words) =>
        Assert.Contains(words, Assert.Throws<DataFileException>(() => SeriesCsv.Read(text, "t.csv")).Message, StringComparison.Ordinal);
}
