using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Dwelling;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Solders;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>
/// Finds iron settings for the end of a jumper wire: the pad is small and has little to take the heat away, so that a second more, or a
/// hotter iron, costs it much. Every setting is simulated until the solder flows and the wire can be set.
/// </summary>
/// <param name="bench">Models and tools.</param>
public sealed class WireTouchSearch(JobBench bench)
{
    /// <summary>Time to set the wire once the solder flows. Judgement.</summary>
    public static readonly Duration Working = Duration.FromSeconds(1);

    /// <summary>Longest touch that is considered. Judgement: common practice is one to three seconds.</summary>
    public static readonly Duration Longest = Duration.FromSeconds(5);

    /// <summary>Tries settings.</summary>
    /// <param name="pad">The pad as it is.</param>
    /// <param name="solder">Solder that the wire is set with.</param>
    /// <param name="candidates">Tools and settings to try.</param>
    /// <param name="boardAtStart">Board temperature when contact begins; null when unknown.</param>
    /// <param name="mostPadTemperature">Highest temperature allowed between pad and laminate.</param>
    /// <param name="cancellation">Stops simulations.</param>
    /// <returns>Settings that flow and hold the limits, the one with the least laminate damage first; empty when none does.</returns>
    public IReadOnlyList<WireTouch> Of(
        PadAccount pad,
        MassFractions solder,
        IEnumerable<IReadOnlyList<Jobs.ToolSetting>> candidates,
        Temperature? boardAtStart,
        Temperature mostPadTemperature,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pad);
        ArgumentNullException.ThrowIfNull(solder);
        ArgumentNullException.ThrowIfNull(candidates);
        SolderCharge charge = JointContents.Full(pad.Site, solder, bench.Properties);
        List<WireTouch> found = [];
        foreach (IReadOnlyList<Jobs.ToolSetting> tools in candidates)
        {
            cancellation.ThrowIfCancellationRequested();
            if (bench.Simulate(pad.Site, new ToolUse(tools, boardAtStart), charge, Longest, cancellation) is not TouchSimulation.Completed { TimeToFlow: { } flows }
                || flows + Working > Longest
                || bench.Simulate(pad.Site, new ToolUse(tools, boardAtStart), charge, flows + Working, cancellation) is not TouchSimulation.Completed touch
                || touch.Pad.PeakCelsius > mostPadTemperature.DegreesCelsius)
            {
                continue;
            }

            PadExposure exposure = new(
                touch.Pad,
                touch.Melted,
                touch.Melted ? bench.ContactOf(pad.Site.Joint, solder, solder[Element.Cu], isBath: false) : null,
                HeatedRegion.Local,
                ExposureStart.AfterCooling);
            found.Add(new WireTouch(
                tools,
                flows,
                flows + Working,
                Temperature.FromDegreesCelsius(touch.Pad.PeakCelsius),
                pad.Model.CostOf(pad.Damage, exposure),
                touch.Warnings));
        }

        return [.. found.OrderBy(t => t.Cost.AddedShareOf(GaugeKind.Laminate)!.Value.Central)];
    }
}

/// <summary>One way of soldering the end of a wire to its pad.</summary>
/// <param name="Tools">Tools and settings.</param>
/// <param name="TimeToFlow">Time until all solder on the pad was at its flow temperature.</param>
/// <param name="Dwell">That, and time to set the wire.</param>
/// <param name="PadPeak">Highest temperature between pad and laminate.</param>
/// <param name="Cost">The budget before and after it.</param>
/// <param name="Warnings">Parts near the pad that come past their limits, one sentence each.</param>
public sealed record WireTouch(
    IReadOnlyList<Jobs.ToolSetting> Tools,
    Duration TimeToFlow,
    Duration Dwell,
    Temperature PadPeak,
    TouchCost Cost,
    IReadOnlyList<string> Warnings);
