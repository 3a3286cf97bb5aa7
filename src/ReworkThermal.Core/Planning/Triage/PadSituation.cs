using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Core.Planning.Triage;

/// <summary>A pad as it arrived.</summary>
/// <param name="Pad">The pad.</param>
/// <param name="State">What it looks like; null when nobody looked.</param>
/// <param name="Prior">Assumption about earlier heat.</param>
/// <param name="IsConnected">Whether it must carry a connection in the end; false for a pin that is connected to nothing.</param>
public sealed record PadSituation(PadId Pad, PadState? State, PriorHeat Prior, bool IsConnected)
{
    /// <summary>What the pad has accumulated by its logged touches, earlier heat included; null when none are known.</summary>
    public PadDamage? Damage { get; init; }
}
