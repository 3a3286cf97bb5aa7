using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Searching;

/// <summary>Runs every tool setting worth considering once without heat of melting and once for the refit.</summary>
internal sealed class StationBuilder(Workload work, TouchSimulator simulator, SolderHeat heat)
{
    private const double IronStepK = 20;

    // Beside the air there are several times as many settings; what lies between is tried around the best ones.
    private const double AssistedIronStepK = 2 * IronStepK;
    private const double LeastIronC = 280;
    private const double AirStepK = 50;
    private const double LeastAirC = 300;
    private const double MostAirC = 450;
    private const int PreheatLevels = 4;
    private const int ClosePreheatLevels = 10;
    private const double LeastPreheatC = 80;

    // A job is one first pass, at least one more melt for the refit; a single touch may use half of the job's share at the most.
    private const double LargestPart = 0.5;

    /// <summary>Share of the laminate's time to delamination that one touch may use.</summary>
    internal double LaminatePerTouch => work.LaminateAllowed * LargestPart;

    /// <summary>All stations of one tool at a time, in a fixed order; runs in parallel.</summary>
    /// <param name="closely">Whether the temperatures of the board are tried three times as closely as usual.</param>
    /// <param name="own">How the joint's own solder melts.</param>
    /// <param name="refill">How the refill alloy melts.</param>
    /// <param name="progress">Told after every run.</param>
    /// <param name="cancellation">Stops the runs.</param>
    internal IReadOnlyList<Station> Build(bool closely, MeltingBehaviour own, MeltingBehaviour refill, IProgress<PlanProgress>? progress, CancellationToken cancellation)
    {
        List<ToolSetting> settings = Settings(Preheats(closely ? ClosePreheatLevels : PreheatLevels));
        EnthalpyCurve bare = heat.CurveWithoutMelting(own);
        EnthalpyCurve full = heat.CurveOf(refill);
        Station?[] stations = new Station?[settings.Count];
        int done = 0;
        Parallel.For(0, settings.Count, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            stations[i] = Run(settings[i], bare, full, refill.Flow.DegreesCelsius, cancellation);
            progress?.Report(new PlanProgress(0.5 * Interlocked.Increment(ref done) / settings.Count, "heating the joint at every tool setting"));
        });
        return [.. stations.OfType<Station>()];
    }

    /// <summary>Stations of an iron that hot air helps, in a fixed order; runs in parallel. A cooler iron never melts what a hotter one does not.</summary>
    /// <param name="single">The stations of one tool at a time.</param>
    /// <param name="own">How the joint's own solder melts.</param>
    /// <param name="refill">How the refill alloy melts.</param>
    /// <param name="flowsC">Lowest and highest flow temperature of all mixes and the refill [°C]: an iron too cool for the lowest is too cool for all, and air hot enough for the highest needs no iron.</param>
    /// <param name="progress">Told after every run.</param>
    /// <param name="cancellation">Stops the runs.</param>
    internal AssistedStations BuildAssisted(
        IReadOnlyList<Station> single,
        MeltingBehaviour own,
        MeltingBehaviour refill,
        (double Lowest, double Highest) flowsC,
        IProgress<PlanProgress>? progress,
        CancellationToken cancellation)
    {
        EnthalpyCurve bare = heat.CurveWithoutMelting(own);
        EnthalpyCurve full = heat.CurveOf(refill);
        AssistedSettings assisted = AssistedSettings.Find(work, Preheats(PreheatLevels), AirSets, work.NeededC(flowsC.Highest), AirAlone);
        List<(BoardHeat? Preheat, AirAssist Air, Iron Iron)> walks =
        [
            .. assisted.Ways.SelectMany(w => work.Request.Bench.Irons.Select(i => (w.Preheat, w.Air, i))),
        ];
        IReadOnlyList<Station>[] stations = new IReadOnlyList<Station>[walks.Count];
        int done = 0;
        Parallel.For(0, walks.Count, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            stations[i] = Walk(walks[i].Iron, walks[i].Preheat, walks[i].Air);
            progress?.Report(new PlanProgress(0.5 + (0.2 * Interlocked.Increment(ref done) / walks.Count), "heating the joint with iron and hot air together"));
        });
        return new AssistedStations([.. stations.SelectMany(s => s)], assisted.Nearest);

        TouchCourse? AirAlone(ToolSetting setting)
        {
            Duration span = work.Limits.AirLead.Value + work.Limits.WorkingTime.Value + work.Limits.PartLag.Value;
            return single.FirstOrDefault(s => s.Setting == setting)?.Bare
                ?? (span > Duration.Zero && simulator.CanSet(setting) ? simulator.Run(bare, flowsC.Highest, setting, span, span, RunPurpose.Screening, cancellation) : null);
        }

        List<Station> Walk(Iron iron, BoardHeat? preheat, AirAssist air)
        {
            List<Station> walked = [];
            foreach (double set in IronSets(iron, AssistedIronStepK))
            {
                ToolSetting setting = new(iron, Temperature.FromDegreesCelsius(set), preheat, null, air);
                if (work.LongestWith(setting) <= work.Limits.WorkingTime.Value)
                {
                    break;
                }

                if (Run(setting, bare, full, refill.Flow.DegreesCelsius, cancellation) is not { } station)
                {
                    continue;
                }

                if (station.Bare.SecondsUntilColdest(work.NeededC(flowsC.Lowest)) is null)
                {
                    break;
                }

                walked.Add(station);
            }

            return walked;
        }
    }

    /// <summary>The first touch and the refit at one setting; null when the run failed.</summary>
    internal Station? Run(ToolSetting setting, EnthalpyCurve bare, EnthalpyCurve refill, double refillFlowC, CancellationToken cancellation)
    {
        Duration longest = work.LongestWith(setting);
        if (simulator.Run(bare, refillFlowC, setting, longest, longest, RunPurpose.Screening, cancellation) is not { } course)
        {
            return null;
        }

        // Without heat of melting it is never slower: if that does not flow, the real refit does not either.
        double needed = work.NeededC(refillFlowC);
        if (course.SecondsUntilColdest(needed) is not { } bareS
            || simulator.Run(refill, refillFlowC, setting, longest, longest, RunPurpose.Screening, cancellation) is not { } real)
        {
            return new Station(setting, course, null, null);
        }

        double? delay = real.SecondsUntilColdest(needed) is { } realS && bareS > 0 ? realS / bareS : null;
        return new Station(setting, course, TouchJudge.Judge(real, setting, needed, work.Limits, longest, LaminatePerTouch), delay);
    }

    private List<ToolSetting> Settings(IReadOnlyList<BoardHeat?> preheats)
    {
        List<ToolSetting> settings = [];
        foreach (Iron iron in work.Request.Bench.Irons)
        {
            settings.AddRange(IronSets(iron, IronStepK).SelectMany(set => preheats.Select(p => new ToolSetting(iron, Temperature.FromDegreesCelsius(set), p))));
        }

        foreach (HotAir air in work.Request.Bench.Air)
        {
            settings.AddRange(AirSets(air.Nozzle).SelectMany(set =>
                preheats.Select(p => new ToolSetting(null, Temperature.FromDegreesCelsius(set), p, air)).Where(simulator.CanSet)));
        }

        return settings;
    }

    // Hottest first, as for air.
    private IEnumerable<double> IronSets(Iron iron, double stepK)
    {
        double most = Math.Min(iron.MostSetting.DegreesCelsius, work.Limits.MostIronSetting.Value.DegreesCelsius);
        double least = Math.Min(most, Math.Max(iron.LeastSetting.DegreesCelsius, LeastIronC));
        for (double set = most; set >= least - 1e-9; set -= stepK)
        {
            yield return set;
        }
    }

    private static IEnumerable<double> AirSets(AirNozzle nozzle)
    {
        double most = Math.Min(nozzle.MostSetting.DegreesCelsius, MostAirC);
        for (double set = most; set >= LeastAirC - 1e-9; set -= AirStepK)
        {
            yield return set;
        }
    }

    private List<BoardHeat?> Preheats(int levels)
    {
        List<BoardHeat?> preheats = [null];
        foreach (Preheater preheater in work.Request.Bench.Preheaters)
        {
            preheats.AddRange(Levels(preheater, levels));
        }

        return preheats;
    }

    /// <summary>Hottest board over which a touch may leave the parts near the joint below their limits [°C].</summary>
    private double MostBoardOfPartsC() => work.Request.Site.Neighbours
        .Select(n => n.MostTemperature?.Central.DegreesCelsius - work.Limits.PartRoom.Value.Kelvins)
        .Min() ?? double.PositiveInfinity;

    private IEnumerable<BoardHeat> Levels(Preheater preheater, int count)
    {
        double most = Math.Min(work.Limits.MostPreheat.Value.DegreesCelsius, MostBoardOfPartsC());
        for (int i = 0; i < count; i++)
        {
            double board = LeastPreheatC + ((most - LeastPreheatC) * i / (count - 1));
            BoardHeat level = new(preheater, Temperature.FromDegreesCelsius(board));
            if (simulator.CanHold(level))
            {
                yield return level;
            }
        }
    }
}

/// <summary>A tool setting with what it does to the joint.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="Bare">Run without heat of melting: bounds every mix.</param>
/// <param name="Refit">The refit at this setting; null when it does not flow within the limits.</param>
/// <param name="Delay">Time to flow of the refill alloy over its time without heat of melting [1]; null when it does not flow.</param>
internal sealed record Station(ToolSetting Setting, TouchCourse Bare, TouchPlan? Refit, double? Delay);
