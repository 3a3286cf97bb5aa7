using UnitsNet;

namespace ReworkThermal.Core.Phases;

/// <summary>What came of asking how much copper a molten solder can hold.</summary>
public abstract record SolubilityOutcome
{
    private SolubilityOutcome()
    {
    }

    /// <summary>The solubility.</summary>
    /// <param name="CopperMassFraction">Mass fraction of copper in the liquid that is saturated with the compound [kg/kg].</param>
    /// <param name="Compound">The copper-tin compound it is in equilibrium with.</param>
    /// <param name="Temperature">The temperature.</param>
    /// <param name="Caveats">What to know about this answer, one sentence each.</param>
    public sealed record Found(double CopperMassFraction, string Compound, Temperature Temperature, IReadOnlyList<string> Caveats) : SolubilityOutcome;

    /// <summary>The question has no answer for this solder.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record NoCompound(string Reason) : SolubilityOutcome;

    /// <summary>The temperature is outside what the data cover.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record OutsideRange(string Reason) : SolubilityOutcome;
}
