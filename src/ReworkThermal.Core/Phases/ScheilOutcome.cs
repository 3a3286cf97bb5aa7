namespace ReworkThermal.Core.Phases;

/// <summary>What came of following solidification without diffusion in the solid.</summary>
public abstract record ScheilOutcome
{
    private ScheilOutcome()
    {
    }

    /// <summary>The path of solidification.</summary>
    /// <param name="Path">Liquid share against temperature, and the solids formed.</param>
    public sealed record Found(ScheilPath Path) : ScheilOutcome;

    /// <summary>The computation did not converge.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record NotConverged(string Reason) : ScheilOutcome;

    /// <summary>The composition is outside the model.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record OutsideModel(string Reason) : ScheilOutcome;
}
