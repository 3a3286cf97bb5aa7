using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Phases.Parameters;
using UnitsNet;

namespace ReworkThermal.Core.Tests.ClosedForms;

/// <summary>
/// Made-up two-element systems whose phase diagrams have exact solutions. "Sn" melts at 500 K and "Pb" at 600 K here, each with a
/// constant entropy of fusion; nothing in these systems is data.
/// </summary>
public sealed class PhasesClosedFormTests
{
    private const double R = 8.31451;
    private const double SnKelvin = 500;
    private const double PbKelvin = 600;
    private const double Fusion = 9;

    /// <summary>Ideal liquid and ideal solid: x_S / x_L = exp(S_f (1 - T/T_m) ... ) for both elements fixes solidus and liquidus.</summary>
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.5)]
    [InlineData(0.8)]
    public void IdealLens_SolidusAndLiquidus_AreExact(double moleFractionPb)
    {
        MeltingBehaviour melting = Melt(Engine(0, 0, true), moleFractionPb);
        double kelvin = melting.Liquidus.Kelvins;
        (double liquidX, double solidX) = Lens(kelvin);
        Assert.Equal(moleFractionPb, liquidX, 1e-6);
        (liquidX, solidX) = Lens(melting.Solidus.Kelvins);
        Assert.Equal(moleFractionPb, solidX, 1e-6);
    }

    /// <summary>Schröder-van Laar: pure solids, ideal liquid, ln x_i = S_f (1/R) (1 - T_i/T); the eutectic is where both sum to one.</summary>
    [Fact]
    public void SchroederVanLaarEutectic_TemperatureAndComposition_AreExact()
    {
        static double Share(double kelvin, double melting) => Math.Exp(Fusion / R * (1 - (melting / kelvin)));
        double eutectic = MathNet.Numerics.RootFinding.Brent.FindRoot(k => Share(k, SnKelvin) + Share(k, PbKelvin) - 1, 300, 499, 1e-10);
        MeltingBehaviour melting = Melt(Engine(0, 300_000, true), Share(eutectic, PbKelvin) + 0.05);
        Assert.Equal(eutectic, melting.Solidus.Kelvins, 1e-4);
        double liquidus = MathNet.Numerics.RootFinding.Brent.FindRoot(k => Share(k, PbKelvin) - Share(eutectic, PbKelvin) - 0.05, 300, 600, 1e-10);
        Assert.Equal(liquidus, melting.Liquidus.Kelvins, 1e-4);
    }

    /// <summary>Symmetric regular solution: the gap is where ln(x/(1-x)) = L (2x - 1) / (R T).</summary>
    [Fact]
    public void MiscibilityGap_OfRegularSolution_IsExact()
    {
        const double interaction = 12_000;
        const double kelvin = 450;
        PhaseEngine engine = Engine(0, interaction, false);
        double exact = MathNet.Numerics.RootFinding.Brent.FindRoot(x => Math.Log(x / (1 - x)) - (interaction * ((2 * x) - 1) / (R * kelvin)), 1e-6, 0.3, 1e-12);
        MassFractions half = MoleFractions.FromAmounts([0, 0, 0, 0, 0, 1, 0, 1, 0]).ToMassFractions();
        EquilibriumState state = Assert.IsType<EquilibriumOutcome.Converged>(engine.EquilibriumAt(half, Temperature.FromKelvins(kelvin))).State;
        Assert.Equal(2, state.Phases.Count);
        double[] sides = [.. state.Phases.Select(p => p.Composition.ToMoleFractions()[Element.Pb]).Order()];
        Assert.Equal(exact, sides[0], 1e-8);
        Assert.Equal(1 - exact, sides[1], 1e-8);
    }

    /// <summary>
    /// Scheil's equation F = (x_L / x_0)^(1 / (k - 1)) for a constant partition coefficient, in moles. The scheme is of first
    /// order: with steps of at most d = 2 % of the liquid, each step errs by at most d^2/2 and there are ln(1/F)/d of them, so the
    /// remaining liquid errs by at most (d/2) ln(1/F) of itself.
    /// </summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    public void ScheilPath_WithConstantPartition_FollowsScheilsEquation(double partition)
    {
        const double overall = 0.05;
        PhaseEngine engine = new(Database(0, 0, true, partition));
        MassFractions alloy = MoleFractions.FromAmounts([0, 0, 0, 0, 0, overall, 0, 1 - overall, 0]).ToMassFractions();
        ScheilPath path = Assert.IsType<ScheilOutcome.Found>(engine.SolidifyWithoutDiffusion(alloy)).Path;
        double meanMass = Mass(overall);
        int compared = 0;
        for (int i = 0; i < path.Temperatures.Count; i++)
        {
            double kelvin = path.Temperatures[i].Kelvins;
            double a = Math.Exp(Fusion / R * (1 - (SnKelvin / kelvin)));
            double liquid = (1 - a) / (1 - (partition * a));
            double moles = Math.Pow(liquid / overall, 1 / (partition - 1));
            double exact = moles * Mass(liquid) / meanMass;
            if (exact is > 0.02 and < 0.98)
            {
                compared++;
                Assert.Equal(exact, path.LiquidMassFractions[i], exact * 0.01 * Math.Log(1 / exact) + 1e-6);
            }
        }

        Assert.True(compared > 20);

        static double Mass(double pb) => (pb * Element.Pb.GramsPerMole()) + ((1 - pb) * Element.Sn.GramsPerMole());
    }

    private static (double Liquid, double Solid) Lens(double kelvin)
    {
        // exp of (G_S - G_L) / R T for each element; x_L,i = x_S,i exp((G_S - G_L)_i / R T), and both compositions sum to one.
        double sn = Math.Exp(Fusion / R * (1 - (SnKelvin / kelvin)));
        double pb = Math.Exp(Fusion / R * (1 - (PbKelvin / kelvin)));
        double solid = (1 - sn) / (pb - sn);
        return (pb * solid, solid);
    }

    private static MeltingBehaviour Melt(PhaseEngine engine, double pb) => Assert.IsType<MeltingOutcome.Found>(
        engine.MeltingOf(MoleFractions.FromAmounts([0, 0, 0, 0, 0, pb, 0, 1 - pb, 0]).ToMassFractions())).Behaviour;

    private static PhaseEngine Engine(double liquidInteraction, double solidInteraction, bool melts) =>
        new(Database(liquidInteraction, solidInteraction, melts, null));

    private static ThermodynamicDatabase Database(double liquidInteraction, double solidInteraction, bool melts, double? partition)
    {
        // Liquid minus solid: S_f (T_m - T); far above the solid when nothing is to melt. With a given partition coefficient k of Pb the
        // solid lies R T ln(1/k) above the liquid... for Pb, so that x_S / x_L = k at every temperature.
        double lift = melts ? 0 : 50_000;
        TemperatureExpression Zero() => new([], [new GibbsPiece()]);
        TemperatureExpression Line(double constant, double linear) => new([], [new GibbsPiece { Constant = constant, Linear = linear }]);
        Sublattice both = new(1, [Element.Sn, Element.Pb]);
        TemperatureExpression liquidPb = partition is { } k
            ? Line(lift, R * Math.Log(k))
            : Line((Fusion * PbKelvin) + lift, -Fusion);
        return new ThermodynamicDatabase(
            R,
            200,
            1700,
            [],
            [
                new PhaseDescription("LIQUID", "liquid", true, [both], [new EndMember([Element.Sn], Line((Fusion * SnKelvin) + lift, -Fusion)), new EndMember([Element.Pb], liquidPb)], [new BinaryInteraction(0, Element.Sn, Element.Pb, [Line(liquidInteraction, 0)])], []),
                new PhaseDescription("SOLID", "solid", false, [both], [new EndMember([Element.Sn], Zero()), new EndMember([Element.Pb], Zero())], [new BinaryInteraction(0, Element.Sn, Element.Pb, [Line(solidInteraction, 0)])], []),
            ],
            [],
            new UncertaintyRule(2, 3, 5, 0.02), new NickelRule(0, 0, 0, 0, new Provenance("none", EvidenceMark.Judgement)));
    }
}
