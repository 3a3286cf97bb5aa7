using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>Heats of fusion, heat capacities and copper solubility.</summary>
public sealed class PhasesHeatAndSolubilityTests
{
    // Enthalpies of fusion [kJ/mol], CRC Handbook of Chemistry and Physics, section "Enthalpy of fusion" (as remembered):
    // Ag 11.3, Bi 11.3, Cu 13.3, In 3.28, Pb 4.77, Sb 19.8, Sn 7.03. Tolerance 2 % (the table's own rounding and revisions).
    [Theory]
    [InlineData(Element.Ag, 11.3)]
    [InlineData(Element.Bi, 11.3)]
    [InlineData(Element.Cu, 13.3)]
    [InlineData(Element.In, 3.28)]
    [InlineData(Element.Pb, 4.77)]
    [InlineData(Element.Sb, 19.8)]
    [InlineData(Element.Sn, 7.03)]
    public void LatentHeat_OfElement_IsItsEnthalpyOfFusion(Element element, double kilojoulePerMole)
    {
        double latent = PhasesData.Melt(MassFractions.Of((element, 1))).LatentHeat.KilojoulesPerKilogram * element.GramsPerMole() / 1000;
        Assert.InRange(latent, 0.98 * kilojoulePerMole, 1.02 * kilojoulePerMole);
    }

    // Specific heats at 25 °C [J/kg/K], CRC Handbook (as remembered): Sn 227, Pb 129, Ag 235, Cu 385. Tolerance 3 %: the melt curve is
    // linear over its first 25 K, so this is a mean from 25 to 50 °C.
    [Theory]
    [InlineData(Element.Sn, 227)]
    [InlineData(Element.Pb, 129)]
    [InlineData(Element.Ag, 235)]
    [InlineData(Element.Cu, 385)]
    public void SpecificHeat_OfElementNearRoomTemperature_IsThePublishedOne(Element element, double joulePerKilogramKelvin)
    {
        MeltCurve curve = PhasesData.Melt(MassFractions.Of((element, 1))).Curve;
        double mean = (curve.EnthalpyAt(Temperature.FromDegreesCelsius(50)) - curve.EnthalpyAt(Temperature.FromDegreesCelsius(25))).JoulesPerKilogram / 25;
        Assert.InRange(mean, 0.97 * joulePerKilogramKelvin, 1.03 * joulePerKilogramKelvin);
    }

    // Copper in liquid tin at the eutectic: 0.7 wt% (ASM Handbook vol. 3, as remembered), near 0.9 wt% in newer work; the other rows were
    // computed from the same parameters with an independent solver (SciPy), so they check the program, not the data. Weight percent.
    [Theory]
    [InlineData("Sn", 227, 0.8, 0.15)]
    [InlineData("Sn", 260, 1.41, 0.015)]
    [InlineData("Sn", 350, 3.89, 0.03)]
    [InlineData("Sn97Ag3", 232, 1.06, 0.015)]
    [InlineData("Sn63Pb37", 217, 0.18, 0.006)]
    [InlineData("Sn63Pb37", 300, 0.72, 0.01)]
    [InlineData("Bi58Sn42", 180, 0.043, 0.001)]
    [InlineData("Bi58Sn42", 320, 0.58, 0.01)]
    [InlineData("Bi52Pb32Sn16", 260, 0.032, 0.001)]
    public void CopperSolubility_OfMoltenSolder_MatchesPublishedAndIndependentValues(string solder, double celsius, double percent, double tolerance)
    {
        MassFractions alloy = Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read(solder)).Fractions;
        SolubilityOutcome.Found found = Assert.IsType<SolubilityOutcome.Found>(PhasesData.Engine.CopperSolubility(alloy, Temperature.FromDegreesCelsius(celsius)));
        Assert.InRange(found.CopperMassFraction * 100, percent - tolerance, percent + tolerance);
    }

    [Theory]
    [InlineData(0.35, 200.5, 195, 137)]
    [InlineData(0.65, 203.2, 171, 137)]
    public void Melting_OfTinSilverCopperWithBismuthTin_MatchesAnIndependentSolver(double share, double liquidus, double flow, double scheilEnd)
    {
        // Computed with a separate SciPy minimiser from the same parameters: checks the program, not the data. Tolerance 0.6 K (its printing).
        MassFractions mix = PhasesData.TinSilverCopper.MixedWith(PhasesData.BismuthTin, share);
        MeltingBehaviour melting = PhasesData.Melt(mix);
        Assert.InRange(melting.Liquidus.DegreesCelsius, liquidus - 0.6, liquidus + 0.6);
        Assert.InRange(melting.Flow.DegreesCelsius, flow - 0.6, flow + 0.6);
        Assert.InRange(PhasesData.Freeze(mix).End.DegreesCelsius, scheilEnd - 0.6, scheilEnd + 0.6);
    }
}
