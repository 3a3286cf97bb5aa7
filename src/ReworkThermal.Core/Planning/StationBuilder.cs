using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>Runs every tool setting worth considering once without heat of melting and once for the refit.</summary>
internal sealed class StationBuilder(Workload work, TouchSimulator simulator, SolderHeat heat)
{
    private const double IronStepK = 20;
    private const double LeastIronC = 280;
    private const double AirStepK = 50;
    private const double LeastAirC = 300;
    private const double MostAirC = 450;
    private const int PreheatLevels = 4;
    private const double LeastPreheatC = 80;

    // What a touch adds to a part beside the joint, roughly; the runs decide.
    private const double PartRoomK = 10;

    // A job is one first pass, at least one more melt for the refit; a single touch may use half of the job's share at the most.
    private const double LargestPart = 0.5;

    /// <summary>Share of the laminate's time to delamination that one touch may use.</summary>
    internal double LaminatePerTouch => work.LaminateAllowed * LargestPart;

    /// <summary>All stations, in a fixed order; runs in parallel.</summary>
    /// <param name="own">How the joint's own solder melts.</param>
    /// <param name="refill">How the refill alloy melts.</param>
    /// <param name="progress">Told after every run.</param>
    /// <param name="cancellation">Stops the runs.</param>
    internal IReadOnlyList<Station> Build(MeltingBehaviour own, MeltingBehaviour refill, IProgress<PlanProgress>? progress, CancellationToken cancellation)
    {
        List<ToolSetting> settings = Settings();
        EnthalpyCurve bare = heat.CurveWithoutMelting(own);
        EnthalpyCurve full = heat.CurveOf(refill);
        Station?[] stations = new Station?[settings.Count];
        int done = 0;
        Parallel.For(0, settings.Count, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            stations[i] = Run(settings[i], bare, full, refill.Flow.DegreesCelsius, cancellation);
            progress?.Report(new PlanProgress(0.7 * Interlocked.Increment(ref done) / settings.Count, "heating the joint at every tool setting"));
        });
        return [.. stations.OfType<Station>()];
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

    private List<ToolSetting> Settings()
    {
        List<BoardHeat?> preheats = [null];
        foreach (Preheater preheater in work.Request.Bench.Preheaters)
        {
            preheats.AddRange(Levels(preheater));
        }

        List<ToolSetting> settings = [];
        foreach (Iron iron in work.Request.Bench.Irons)
        {
            double most = Math.Min(iron.MostSetting.DegreesCelsius, work.Limits.MostIronSetting.Value.DegreesCelsius);
            double least = Math.Min(most, Math.Max(iron.LeastSetting.DegreesCelsius, LeastIronC));
            for (double set = most; set >= least - 1e-9; set -= IronStepK)
            {
                settings.AddRange(preheats.Select(p => new ToolSetting(iron, Temperature.FromDegreesCelsius(set), p)));
            }
        }

        foreach (HotAir air in work.Request.Bench.Air)
        {
            double most = Math.Min(air.Nozzle.MostSetting.DegreesCelsius, MostAirC);
            for (double set = most; set >= LeastAirC - 1e-9; set -= AirStepK)
            {
                // Air alone is too slow for a joint on planes, and scorches its surroundings; it works with heat from below.
                settings.AddRange(preheats.OfType<BoardHeat>().Select(p => new ToolSetting(null, Temperature.FromDegreesCelsius(set), p, air)).Where(simulator.CanSet));
            }
        }

        return settings;
    }

    /// <summary>Hottest board over which a touch may leave the parts near the joint below their limits [°C].</summary>
    private double MostBoardOfPartsC() => work.Request.Site.Neighbours
        .Select(n => n.MostTemperature?.Central.DegreesCelsius - PartRoomK)
        .Min() ?? double.PositiveInfinity;

    private IEnumerable<BoardHeat> Levels(Preheater preheater)
    {
        double most = Math.Min(work.Limits.MostPreheat.Value.DegreesCelsius, MostBoardOfPartsC());
        for (int i = 0; i < PreheatLevels; i++)
        {
            double board = LeastPreheatC + ((most - LeastPreheatC) * i / (PreheatLevels - 1));
            BoardHeat level = new(preheater, Temperature.FromDegreesCelsius(board));
            if (simulator.CanHold(level))
            {
                yield return level;
            }
        }
    }
}
