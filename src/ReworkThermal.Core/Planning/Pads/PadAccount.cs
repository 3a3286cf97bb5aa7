using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;

namespace ReworkThermal.Core.Planning.Pads;

/// <summary>A pad with everything it has had, judged.</summary>
/// <param name="Ledger">What was logged.</param>
/// <param name="Site">The joint it is judged as.</param>
/// <param name="Model">Its damage model.</param>
/// <param name="Prior">Assumed earlier heat.</param>
/// <param name="Damage">What it has accumulated.</param>
/// <param name="Budget">Its heat budget.</param>
/// <param name="Contents">Solder in its joint now.</param>
/// <param name="Steps">What each exposure did, by the time they began.</param>
/// <param name="NotCounted">Exposures whose temperature could be neither read nor computed; they are missing from the budget.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
public sealed record PadAccount(
    PadLedger Ledger,
    JointSite Site,
    DamageModel Model,
    PriorHeat Prior,
    PadDamage Damage,
    HeatBudget Budget,
    SolderCharge Contents,
    IReadOnlyList<PadStep> Steps,
    int NotCounted,
    IReadOnlyList<string> Notes)
{
    /// <summary>Solder that fills its joint.</summary>
    public required SolderCharge Full { get; init; }

    /// <summary>Whether molten solder has been on its copper.</summary>
    public required bool HasCharge { get; init; }

    /// <summary>When the last exposure that counts ended; null before the first.</summary>
    public required DateTimeOffset? EndedAt { get; init; }

    /// <summary>How full the joint is, over what fills it [1].</summary>
    public double Fill => Contents.Amount / Full.Amount;

    /// <summary>Whether nobody stated what is assumed about earlier heat.</summary>
    public bool PriorIsAssumed => Ledger.Prior is null;
}
