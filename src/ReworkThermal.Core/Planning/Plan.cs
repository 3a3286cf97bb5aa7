using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Uncertainty;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>One way of doing the job, from the first touch to the refit.</summary>
public sealed record Plan
{
    /// <summary>What this plan is best at.</summary>
    public required PlanKind Kind { get; init; }

    /// <summary>The dilution alloy; null when nothing is added.</summary>
    public required Alloy? Alloy { get; init; }

    /// <summary>Share of the mix that is added alloy.</summary>
    public required Ratio Share { get; init; }

    /// <summary>Mass of metal to add in the first pass.</summary>
    public required Mass Added { get; init; }

    /// <summary>Length of wire that holds it; null when nothing is added or the alloy does not come as wire.</summary>
    public required Length? WireLength { get; init; }

    /// <summary>How the mix of the first pass melts.</summary>
    public required MeltingBehaviour Melting { get; init; }

    /// <summary>The first pass: melt the mix and draw it out.</summary>
    public required TouchPlan First { get; init; }

    /// <summary>Every later pass and the refit, done at the flow temperature of the refill alloy.</summary>
    public required TouchPlan Refit { get; init; }

    /// <summary>Add-melt-remove cycles before the refit.</summary>
    public required int Passes { get; init; }

    /// <summary>The joint after passes and refit.</summary>
    public required FinalJoint Final { get; init; }

    /// <summary>Heat budget of the pad before the job, by the stated assumption about earlier heat.</summary>
    public required HeatBudget Before { get; init; }

    /// <summary>Heat budget of the pad after the job.</summary>
    public required HeatBudget After { get; init; }

    /// <summary>Share of the laminate's time to delamination that the whole job uses, at the ends of the activation-energy range [1].</summary>
    public required Spread LaminateShare { get; init; }

    /// <summary>The limit that stops a cooler or quicker plan of this kind, one clause.</summary>
    public required string BindingLimit { get; init; }

    /// <summary>Heat that the plan gives a pad, touch by touch: the first pass, the later ones, the refit.</summary>
    public required IReadOnlyList<PadExposure> Exposures { get; init; }

    /// <summary>Parts near the joint that come near or past a limit.</summary>
    public required IReadOnlyList<NeighbourStrain> Neighbours { get; init; }

    /// <summary>Hazards, one sentence each.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>What the first touch does on many sampled benches; null when it was not sampled.</summary>
    public FlowSpread? Sampling { get; init; }

    /// <summary>Share of the heat budget that the job uses: governing gauge after less governing gauge before.</summary>
    public Spread BudgetUsed => Spread.Added(After.Share, Before.Share);
}
