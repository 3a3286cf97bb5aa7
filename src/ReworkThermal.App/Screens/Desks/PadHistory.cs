using ReworkThermal.Core.Damage;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>What is known of the heat a pad has had.</summary>
internal abstract record PadHistory
{
    private PadHistory()
    {
    }

    /// <summary>It can be reckoned.</summary>
    /// <param name="Model">The pad's damage model.</param>
    /// <param name="State">The pad now.</param>
    /// <param name="WithoutTemperatures">Touches that are not in it, because nobody has temperatures for them.</param>
    internal sealed record Known(DamageModel Model, PadDamage State, int WithoutTemperatures) : PadHistory;

    /// <summary>Something is missing.</summary>
    internal sealed record Unknown(string Reason) : PadHistory;
}
