using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Reports.Solders;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Records;

/// <summary>Turns a job into parts of its record.</summary>
public static class RecordReporting
{
    /// <summary>Solder on arrival and alloys brought to the board.</summary>
    /// <param name="state">The job.</param>
    /// <param name="arrived">Solder on arrival.</param>
    /// <param name="find">Reads the designation of an alloy.</param>
    /// <returns>One line per alloy, arrival first, then in the order of first use.</returns>
    public static IReadOnlyList<AlloyUse> Alloys(JobState state, string? arrived, Func<string, DesignationReading> find)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(find);
        List<AlloyUse> uses = [];
        if (arrived is not null)
        {
            uses.Add(new AlloyUse(arrived, "on arrival", 0, null, Lead(arrived)));
        }

        foreach (IGrouping<string, Exposure> alloy in state.Exposures.Select(e => e.What).Where(e => e.Added is not null).GroupBy(e => e.Added!.Designation))
        {
            List<double> masses = [.. alloy.Select(e => e.Added!.Mass?.Kilograms).OfType<double>()];
            uses.Add(new AlloyUse(
                alloy.Key,
                alloy.Any(e => e.Purpose is TouchPurpose.Refill) ? "refill" : alloy.Any(e => e.Purpose is TouchPurpose.Wire) ? "wires" : "dilution",
                alloy.Count(),
                masses.Count > 0 ? Mass.FromKilograms(masses.Sum()) : null,
                Lead(alloy.Key)));
        }

        return uses;

        double? Lead(string designation) => find(designation) is DesignationReading.Accepted accepted ? accepted.Fractions[Element.Pb] : null;
    }

    /// <summary>The joint that was worked on most; of several, the one touched last.</summary>
    /// <param name="pads">Pads of the job, judged.</param>
    /// <returns>The pad; null when none was touched.</returns>
    public static PadAccount? MostWorked(IReadOnlyList<PadAccount> pads)
    {
        ArgumentNullException.ThrowIfNull(pads);
        return pads
            .Where(p => p.Ledger.Heats.Count > 0)
            .OrderByDescending(p => p.Ledger.Heats.Count)
            .ThenByDescending(p => p.Ledger.Heats.Max(h => h.Number))
            .FirstOrDefault();
    }

    /// <summary>The solder of a joint at the end.</summary>
    /// <param name="pad">The pad.</param>
    /// <param name="bench">Phase equilibria.</param>
    /// <param name="sources">Citations of the data used.</param>
    /// <returns>The solder; null when its melting could not be computed.</returns>
    public static FinalSolder? Final(PadAccount pad, JobBench bench, IReadOnlyList<string> sources)
    {
        ArgumentNullException.ThrowIfNull(pad);
        ArgumentNullException.ThrowIfNull(bench);
        if (bench.MeltingOf(pad.Contents.Fractions) is not MeltingOutcome.Found { Behaviour: { } melting })
        {
            return null;
        }

        ScheilPath? path = (bench.FreezingOf(pad.Contents.Fractions) as ScheilOutcome.Found)?.Path;
        return new FinalSolder(
            pad.Ledger.Pad,
            pad.Contents,
            melting.Solidus,
            melting.Flow,
            melting.Liquidus,
            MeltReporting.Curve(melting, [], sources),
            path?.End,
            path?.LiquidMassFractionAt(ServiceTemperatures.Warm),
            path?.LiquidMassFractionAt(ServiceTemperatures.Hot));
    }
}
