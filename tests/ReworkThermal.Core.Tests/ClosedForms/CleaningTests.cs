using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Tests.ClosedForms;

/// <summary>Repeated passes against the geometric series they form, and wire against a cylinder.</summary>
public class CleaningTests
{
    private static readonly MassFractions _tin = MassFractions.Of((Element.Sn, 1));
    private static readonly MassFractions _bismuth = MassFractions.Of((Element.Bi, 1));

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void Flushing_thins_the_dilution_alloy_geometrically(int passes)
    {
        // 10 mg joint, 10 mg bismuth: half bismuth. Each pass keeps 20 %; each flush fills up to 10 mg again. After the first pass 4 mg stay
        // with 50 % bismuth; then every flush multiplies the bismuth share by residue / 10 mg.
        SolderCharge joint = new(Mass.FromMilligrams(10), _tin);
        IReadOnlyList<CleaningPass> plan = Cleaning.DiluteThenFlush(joint, joint with { Fractions = _bismuth }, _tin, passes, Ratio.FromPercent(80));
        IReadOnlyList<SolderCharge> residues = Cleaning.ResiduesAfter(joint, plan);
        double expected = passes == 1 ? 0.5 : 0.5 * 0.4 * Math.Pow(0.2, passes - 2);
        Assert.Equal(expected, residues[^1].Fractions[Element.Bi], 12);
        Assert.Equal(passes == 1 ? 4 : 2, residues[^1].Amount.Milligrams, 9);
    }

    [Fact]
    public void A_refill_fills_the_joint_and_conserves_the_residue()
    {
        SolderCharge residue = new(Mass.FromMilligrams(2), _bismuth);
        SolderCharge final = Cleaning.Refilled(residue, _tin, Mass.FromMilligrams(10));
        Assert.Equal(10, final.Amount.Milligrams, 9);
        Assert.Equal(0.2, final.Fractions[Element.Bi], 12);
    }

    [Fact]
    public void No_pass_leaves_the_joint_as_it_is() =>
        Assert.Empty(Cleaning.DiluteThenFlush(new SolderCharge(Mass.FromMilligrams(10), _tin), new SolderCharge(Mass.Zero, _bismuth), _tin, 0, Ratio.FromPercent(80)));

    [Fact]
    public void Wire_length_and_metal_are_inverse_and_match_a_cylinder()
    {
        // Solid wire of 1 mm: pi/4 mm2 x 7.3 mg/mm3 per mm.
        SolderWire solid = new(Length.FromMillimeters(1), Density.FromGramsPerCubicCentimeter(7.3), Ratio.Zero, Density.FromGramsPerCubicCentimeter(1.07));
        Assert.Equal(Math.PI / 4 * 7.3, solid.MetalIn(Length.FromMillimeters(1)).Milligrams, 9);

        // 2 % flux of density 1.07 takes 12 % of the volume, so a cored wire holds that much less metal.
        SolderWire cored = new(Length.FromMillimeters(1), Density.FromGramsPerCubicCentimeter(7.3), Ratio.FromPercent(2), Density.FromGramsPerCubicCentimeter(1.07));
        double metalVolumeShare = (0.98 / 7.3) / ((0.98 / 7.3) + (0.02 / 1.07));
        Assert.Equal(Math.PI / 4 * 7.3 * metalVolumeShare, cored.MetalIn(Length.FromMillimeters(1)).Milligrams, 9);
        Assert.Equal(12.5, cored.LengthFor(cored.MetalIn(Length.FromMillimeters(12.5))).Millimeters, 9);
    }
}
