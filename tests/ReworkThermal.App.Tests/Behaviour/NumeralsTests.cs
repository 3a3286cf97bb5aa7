using ReworkThermal.App.Rendering;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class NumeralsTests
{
    [Theory]
    [InlineData(0, "0.0 %")]
    [InlineData(0.5, "50 %")]
    [InlineData(0.042, "4.2 %")]
    [InlineData(0.00042, "0.042 %")]
    [InlineData(0.0000042, "0.00042 %")]
    [InlineData(0.0000000042, "under 0.0001 %")]
    [InlineData(-0.02, "-2.0 %")]
    public void A_share_keeps_what_matters(double share, string expected) => Assert.Equal(expected, Numerals.Percent(share));

    [Theory]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(-0.06, 1, "-0.1")]
    [InlineData(0, 0, "0")]
    [InlineData(-0.4, 0, "0")]
    [InlineData(1234.5, 2, "1234.50")]
    public void There_is_no_negative_zero(double value, int digits, string expected) => Assert.Equal(expected, Numerals.Fixed(value, digits));
}
