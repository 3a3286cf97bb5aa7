using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Searching;

/// <summary>
/// Ways of helping an iron with hot air: heat from below and air that leave time to work before anything near the joint is too hot.
/// Hotter air over a hotter board is never easier on what lies beside the joint, so what a cooler one scorches is not run.
/// </summary>
internal sealed class AssistedSettings
{
    private readonly List<(BoardHeat? Preheat, AirAssist Air)> _ways = [];

    private AssistedSettings()
    {
    }

    /// <summary>The ways, in a fixed order.</summary>
    internal IReadOnlyList<(BoardHeat? Preheat, AirAssist Air)> Ways => _ways;

    /// <summary>What came nearest to a way when there is none: the air alone, and when it must stop; null when there are ways or no air.</summary>
    internal (ToolSetting AirAlone, TouchEnd End)? Nearest { get; private set; }

    /// <summary>Finds the ways.</summary>
    /// <param name="work">What is asked.</param>
    /// <param name="preheats">Heat from below, null for none; of one preheater cooler boards first.</param>
    /// <param name="airSets">Temperatures that a nozzle is tried at [°C].</param>
    /// <param name="highestC">Temperature at which the last of all mixes flows [°C]: air that gets there before the iron touches needs no iron.</param>
    /// <param name="airAlone">Runs air alone, without heat of melting, for as long as it helps and longer; null when it cannot be run.</param>
    /// <returns>The ways.</returns>
    internal static AssistedSettings Find(
        Workload work,
        IReadOnlyList<BoardHeat?> preheats,
        Func<AirNozzle, IEnumerable<double>> airSets,
        double highestC,
        Func<ToolSetting, TouchCourse?> airAlone)
    {
        AssistedSettings found = new();
        foreach (HotAir air in work.Request.Bench.Air)
        {
            List<double> sets = [.. airSets(air.Nozzle).Order()];
            foreach (IGrouping<Preheater?, BoardHeat?> boards in preheats.GroupBy(p => p?.Preheater))
            {
                int most = sets.Count;
                foreach (BoardHeat? board in boards)
                {
                    most = sets.Take(most).TakeWhile(set => found.Holds(work, new ToolSetting(null, Temperature.FromDegreesCelsius(set), board, air), highestC, airAlone)).Count();
                    found._ways.AddRange(sets.Take(most).Select(set => (board, new AirAssist(air, Temperature.FromDegreesCelsius(set), work.Limits.AirLead.Value))));
                }
            }
        }

        found.Nearest = found._ways.Count == 0 ? found.Nearest : null;
        return found;
    }

    private bool Holds(Workload work, ToolSetting alone, double highestC, Func<ToolSetting, TouchCourse?> airAlone)
    {
        if (airAlone(alone) is not { } course)
        {
            return false;
        }

        double lead = work.Limits.AirLead.Value.Seconds;
        if (course.SecondsUntilColdest(highestC) <= lead)
        {
            return false;
        }

        TouchEnd end = TouchJudge.Stop(course, work.Limits, work.Limits.MostAirTime.Value, work.LaminateAllowed);
        Nearest = Nearest is { } so && so.End.Seconds >= end.Seconds ? so : (alone, end);
        return end.Seconds >= lead + work.Limits.WorkingTime.Value.Seconds;
    }
}

/// <summary>Stations of an iron that hot air helps.</summary>
/// <param name="Stations">The stations.</param>
/// <param name="Nearest">When no air leaves time for an iron: the air that nearly did, and when it must stop.</param>
internal sealed record AssistedStations(IReadOnlyList<Station> Stations, (ToolSetting AirAlone, TouchEnd End)? Nearest);
