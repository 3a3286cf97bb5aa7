using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Searching;

/// <summary>All mixes worth considering for a joint: for every alloy the amounts that each lower the flow temperature further.</summary>
internal sealed class MixOptions
{
    /// <summary>Amounts tried per alloy.</summary>
    internal const int Rungs = 10;

    // An amount is only worth its metal if it lowers the flow temperature by at least this much.
    private const double WorthwhileK = 2;

    private MixOptions(MixOption asIs, IReadOnlyList<MixOption> diluted, IReadOnlyList<RuledOut> ruledOut)
    {
        AsIs = asIs;
        Diluted = diluted;
        RuledOut = ruledOut;
    }

    /// <summary>The joint's own solder.</summary>
    internal MixOption AsIs { get; }

    /// <summary>Mixes, by alloy name and rising amount.</summary>
    internal IReadOnlyList<MixOption> Diluted { get; }

    /// <summary>Alloys that are not considered, and why.</summary>
    internal IReadOnlyList<RuledOut> RuledOut { get; }

    /// <summary>Computes the mixes; alloys in parallel, the result in a fixed order.</summary>
    /// <returns>The mixes, or null with the reason when the melting of the joint's own solder cannot be computed.</returns>
    internal static MixOptions? Make(PhaseEngine engine, PlanRequest request, SolderCharge joint, CancellationToken cancellation, out string reason)
    {
        reason = string.Empty;
        if (engine.MeltingOf(joint.Fractions) is not MeltingOutcome.Found own)
        {
            reason = $"the melting of {request.BaseSolder.Name} could not be computed";
            return null;
        }

        IReadOnlyList<Alloy> alloys = request.Bench.Dilutions;
        List<MixOption>[] options = new List<MixOption>[alloys.Count];
        string?[] refused = new string?[alloys.Count];
        Parallel.For(0, alloys.Count, new ParallelOptions { CancellationToken = cancellation }, i =>
            options[i] = OptionsOf(engine, request, joint, alloys[i], own.Behaviour.Flow.DegreesCelsius, out refused[i]));
        return new MixOptions(
            new MixOption(null, Ratio.Zero, Mass.Zero, joint, own.Behaviour),
            [.. options.SelectMany(o => o)],
            [.. alloys.Zip(refused).Where(p => p.Second is not null).Select(p => new RuledOut(p.First.Name, p.Second!))]);
    }

    private static List<MixOption> OptionsOf(PhaseEngine engine, PlanRequest request, SolderCharge joint, Alloy alloy, double ownFlowC, out string? refused)
    {
        List<MixOption> options = [];
        refused = null;
        if (request.Limits.LeadFreeOnly && !alloy.IsLeadFree)
        {
            refused = "contains lead, and the job is lead-free only";
            return options;
        }

        double most = request.Limits.MostAddedShare.Value.DecimalFractions;
        double lowest = ownFlowC;
        for (int rung = 1; rung <= Rungs; rung++)
        {
            Ratio share = Ratio.FromDecimalFractions(most * rung / Rungs);
            Mass added = joint.AmountForShare(share);
            SolderCharge mix = joint.With(new SolderCharge(added, alloy.Fractions));
            MeltingOutcome outcome = engine.MeltingOf(mix.Fractions);
            if (outcome is not MeltingOutcome.Found found)
            {
                // Smaller amounts may be inside the data; larger ones are not tried.
                if (options.Count == 0)
                {
                    refused = $"no melting of its mix with {request.BaseSolder.Name}: {outcome.Lack}";
                    return [];
                }

                break;
            }

            double flow = found.Behaviour.Flow.DegreesCelsius;
            if (flow <= lowest - WorthwhileK)
            {
                options.Add(new MixOption(alloy, share, added, mix, found.Behaviour));
                lowest = flow;
            }
        }

        if (options.Count == 0)
        {
            refused = string.Create(
                CultureInfo.InvariantCulture,
                $"does not lower the flow temperature of {request.BaseSolder.Name}, {ownFlowC:0} °C, in any amount up to {most:P0} of the mix");
        }

        return options;
    }
}

/// <summary>One way of bringing the joint's solder to flow: as it is, or with some of an alloy melted into it.</summary>
/// <param name="Alloy">The dilution alloy; null when nothing is added.</param>
/// <param name="Share">Share of the mix that is added alloy.</param>
/// <param name="Added">Mass of metal to add.</param>
/// <param name="Mix">The mix on the joint.</param>
/// <param name="Melting">How the mix melts.</param>
internal sealed record MixOption(Alloy? Alloy, Ratio Share, Mass Added, SolderCharge Mix, MeltingBehaviour Melting)
{
    /// <summary>Flow temperature [°C].</summary>
    internal double FlowC => Melting.Flow.DegreesCelsius;

    /// <summary>Name for reports.</summary>
    internal string Name => Alloy?.Name ?? "nothing added";
}
