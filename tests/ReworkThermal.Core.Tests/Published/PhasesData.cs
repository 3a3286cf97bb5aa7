using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Core.Phases.Solving;
using ReworkThermal.Data;
using ReworkThermal.Data.Thermodynamics;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>The shipped thermodynamic data and an engine on them, loaded once for all tests of the phases.</summary>
internal static class PhasesData
{
    private static readonly Lazy<ThermodynamicDatabase> _database = new(() =>
        ThermodynamicFiles.Load(Path.Combine(DataRoot.BesideProgram.Alloys, "thermodynamics")));

    private static readonly Lazy<PhaseEngine> _engine = new(() => new PhaseEngine(Database));

    private static readonly Lazy<PhaseEngine> _unlimited = new(() =>
        new PhaseEngine(Database with { Systems = [.. Database.Systems.Select(s => s with { Limits = [] })] }));

    internal static ThermodynamicDatabase Database => _database.Value;

    internal static PhaseEngine Engine => _engine.Value;

    /// <summary>The same data without the limits of their systems: what the solvers do where nothing is answered.</summary>
    internal static PhaseEngine Unlimited => _unlimited.Value;

    internal static MassFractions TinSilverCopper { get; } = MassFractions.Of((Element.Sn, 96.5), (Element.Ag, 3), (Element.Cu, 0.5));

    internal static MassFractions TinLead { get; } = MassFractions.Of((Element.Sn, 63), (Element.Pb, 37));

    internal static MassFractions BismuthTin { get; } = MassFractions.Of((Element.Bi, 58), (Element.Sn, 42));

    internal static MassFractions BismuthLeadTin { get; } = MassFractions.Of((Element.Bi, 52), (Element.Pb, 32), (Element.Sn, 16));

    internal static MassFractions IndiumTin { get; } = MassFractions.Of((Element.In, 52), (Element.Sn, 48));

    internal static MeltingBehaviour Melt(MassFractions alloy) =>
        Assert.IsType<MeltingOutcome.Found>(Engine.MeltingOf(alloy)).Behaviour;

    internal static ScheilPath Freeze(MassFractions alloy) =>
        Assert.IsType<ScheilOutcome.Found>(Engine.SolidifyWithoutDiffusion(alloy)).Path;

    internal static EquilibriumState Equilibrium(MassFractions alloy, double celsius) =>
        Assert.IsType<EquilibriumOutcome.Converged>(Engine.EquilibriumAt(alloy, UnitsNet.Temperature.FromDegreesCelsius(celsius))).State;

    // Gold and zinc are answered in some company only, so they are left out of free compositions.
    private static readonly Element[] _free = [Element.Ag, Element.Bi, Element.Cu, Element.In, Element.Pb, Element.Sb, Element.Sn];

    /// <summary>A composition over some of the elements, from traces (1e-6) to pure, the same for the same number.</summary>
    internal static MassFractions Random(int seed)
    {
        Random random = new(seed);
        double[] masses = new double[ElementData.Count];
        foreach (Element e in _free)
        {
            masses[(int)e] = random.NextDouble() < 0.45 ? 0 : Math.Exp(-14 * random.NextDouble());
        }

        if (masses.Sum() <= 0)
        {
            masses[(int)Element.Sn] = 1;
        }

        return MassFractions.FromMasses(masses);
    }

    /// <summary>A joint with something mixed in: what a technician could meet, over seven elements.</summary>
    internal static MassFractions RandomMix(int seed)
    {
        Random random = new(seed);
        MassFractions[] bases = [TinSilverCopper, TinLead, MassFractions.Of((Element.Sn, 99.3), (Element.Cu, 0.7)), MassFractions.Of((Element.Sn, 96.5), (Element.Ag, 3.5))];
        MassFractions[] added = [BismuthTin, BismuthLeadTin, TinLead, IndiumTin, MassFractions.Of((Element.Sn, 95), (Element.Sb, 5)), MassFractions.Of((Element.Bi, 57), (Element.Sn, 42), (Element.Ag, 1))];
        MassFractions mix;
        do
        {
            mix = bases[random.Next(bases.Length)];
            for (int i = 0; i < 2; i++)
            {
                mix = mix.MixedWith(added[random.Next(added.Length)], random.NextDouble() * 0.6);
            }
        }
        while (ModelSupport.Barrier(Database, mix) is not null);

        return mix;
    }
}
