namespace ReworkThermal.Core.Phases.Solving;

/// <summary>What came of a step to a lower temperature.</summary>
internal abstract record CoolingStepOutcome
{
    private CoolingStepOutcome()
    {
    }

    /// <summary>The target was reached with the same phases.</summary>
    internal sealed record Reached(Assemblage State) : CoolingStepOutcome;

    /// <summary>A phase formed or vanished on the way; both states are at the temperature of the change.</summary>
    /// <param name="Before">State on the upper side.</param>
    /// <param name="After">State on the lower side.</param>
    /// <param name="Joining">The phase that formed, or null when one vanished.</param>
    internal sealed record Changed(Assemblage Before, Assemblage After, PhaseState? Joining) : CoolingStepOutcome;

    /// <summary>Newton's method did not converge to a sound state; a smaller step may.</summary>
    internal sealed record Failed : CoolingStepOutcome;
}
