using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Tests.Behaviour;

public class AlloyDesignationTests
{
    [Theory]
    [InlineData("Sn96.5Ag3Cu0.5")]
    [InlineData("SnAg3Cu0.5")]
    [InlineData(" Sn96.5 Ag3 Cu0.5 ")]
    public void Designations_of_one_alloy_read_alike(string text)
    {
        DesignationReading.Accepted reading = Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read(text));
        Assert.Equal(0.965, reading.Fractions[Element.Sn], 12);
        Assert.Equal(0.03, reading.Fractions[Element.Ag], 12);
        Assert.Equal(0.005, reading.Fractions[Element.Cu], 12);
        Assert.Empty(reading.Notes);
    }

    [Fact]
    public void A_pure_element_needs_no_number() =>
        Assert.Equal(1, Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read("Bi")).Fractions[Element.Bi]);

    [Fact]
    public void A_trace_is_carried_and_said()
    {
        DesignationReading.Accepted reading = Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read("Sn99.25Cu0.7Ni0.05"));
        Assert.Equal(0.0005, reading.Fractions.InertTrace, 12);
        Assert.Contains(reading.Notes, n => n.Contains("inert trace", StringComparison.Ordinal));
    }

    [Fact]
    public void Nickel_is_named_and_travels_with_a_mix()
    {
        MassFractions doped = Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read("Sn99.1Cu0.7Ni0.2")).Fractions;
        Assert.Equal("Sn99.1Cu0.7Ni0.2", doped.ToString());
        Assert.Equal(0.001, doped.MixedWith(MassFractions.Of((Element.Sn, 1)), 0.5).Nickel, 12);
    }

    [Theory]
    [InlineData("Sn91Zn9", Element.Zn, 0.09)]
    [InlineData("SnAg3Au5", Element.Au, 0.05)]
    public void Gold_and_zinc_are_read(string text, Element element, double share) =>
        Assert.Equal(share, Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read(text)).Fractions[element], 12);

    [Fact]
    public void Rounded_percentages_are_scaled_and_said()
    {
        DesignationReading.Accepted reading = Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read("Sn63.02Pb37"));
        Assert.Contains(reading.Notes, n => n.Contains("scaled to 100", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(null, "no composition")]
    [InlineData("  ", "no composition")]
    [InlineData("Sn63Xx37", "'Xx' is not an element")]
    [InlineData("Sn50Cd50", "cadmium is toxic")]
    [InlineData("Sn50Al50", "aluminium is not modelled")]
    [InlineData("Sn63Pb36", "add up to 99, not 100")]
    [InlineData("Sn50Pb37Sn13", "named twice")]
    [InlineData("SnPb", "no percentage")]
    [InlineData("SnPb60Bi45", "already add up to 105")]
    [InlineData("Sn98Ni2", "at most 1 % can be carried")]
    [InlineData("Sn99Ge1", "at most 0.15 %")]
    [InlineData("Sn63,5Pb36,5", "is not a composition")]
    [InlineData("SnNaN", "is not an element")]
    [InlineData("63Sn37Pb", "is not a composition")]
    [InlineData("\u001b[31mSn", "is not a composition")]
    public void A_wrong_designation_gets_one_clear_sentence(string? text, string fragment)
    {
        DesignationReading.Refused refused = Assert.IsType<DesignationReading.Refused>(AlloyDesignation.Read(text));
        Assert.Contains(fragment, refused.Reason, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', refused.Reason);
    }
}
