using BenchmarkDotNet.Attributes;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Data;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Thermodynamics;
using UnitsNet;

namespace ReworkThermal.Benchmarks;

/// <summary>How long the phase engine takes. Compare ratios within one run on one machine, not figures of different machines.</summary>
[MemoryDiagnoser]
public class MeltBenchmarks
{
    private const double GridStep = 0.04;

    private const int GridSize = 20;

    private PhaseEngine _engine = null!;
    private AlloyShelf _alloys = null!;
    private MassFractions _solder = null!;
    private MassFractions _mix = null!;

    /// <summary>Reads the data once.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _engine = new PhaseEngine(ThermodynamicFiles.Load(Path.Combine(DataRoot.BesideProgram.Alloys, "thermodynamics")));
        _alloys = AlloyShelf.Load(DataRoot.BesideProgram);
        _solder = MassFractions.Of((Element.Sn, 96.5), (Element.Ag, 3), (Element.Cu, 0.5));
        _mix = _solder.MixedWith(MassFractions.Of((Element.Bi, 52), (Element.Pb, 32), (Element.Sn, 16)), 0.4);
    }

    /// <summary>Melting behaviour of a common lead-free solder.</summary>
    [Benchmark(Baseline = true)]
    public MeltingOutcome ThreeElements() => _engine.MeltingOf(_solder);

    /// <summary>Melting behaviour of a five-element mix.</summary>
    [Benchmark]
    public MeltingOutcome FiveElements() => _engine.MeltingOf(_mix);

    /// <summary>Solidification of the same mix without diffusion in the solid.</summary>
    [Benchmark]
    public ScheilOutcome FiveElementsFreezing() => _engine.SolidifyWithoutDiffusion(_mix);

    /// <summary>Melting behaviour of every dilution alloy in twenty amounts.</summary>
    [Benchmark]
    public int EveryAlloyInTwentyAmounts()
    {
        int found = 0;
        Parallel.ForEach(_alloys.Dilutions, alloy =>
        {
            for (int i = 1; i <= GridSize; i++)
            {
                if (_engine.MeltingOf(_solder.MixedWith(alloy.Fractions, i * GridStep)) is MeltingOutcome.Found)
                {
                    Interlocked.Increment(ref found);
                }
            }
        });
        return found;
    }

    /// <summary>The smallest amount of every dilution alloy that makes a joint flow at 170 °C.</summary>
    [Benchmark]
    public DilutionRanking RankForTarget() => new DilutionSearch(_engine).Rank(new DilutionQuestion(
        new SolderCharge(Mass.FromMilligrams(10), _solder),
        _alloys.Dilutions,
        Temperature.FromDegreesCelsius(170),
        LeadFreeOnly: false,
        Ratio.FromPercent(90)));
}
