using UnitsNet;

namespace ReworkThermal.Core.Phases;

/// <summary>What came of computing the melting behaviour of a composition.</summary>
public abstract record MeltingOutcome
{
    private MeltingOutcome()
    {
    }

    /// <summary>Why there is no flow temperature, one sentence; null when there is one.</summary>
    public abstract string? Lack { get; }

    /// <summary>The melting behaviour.</summary>
    /// <param name="Behaviour">Temperatures, melt curve and caveats.</param>
    public sealed record Found(MeltingBehaviour Behaviour) : MeltingOutcome
    {
        /// <inheritdoc/>
        public override string? Lack => null;
    }

    /// <summary>Where melting begins is known, where it ends is not.</summary>
    /// <param name="Solidus">Temperature at which the first liquid appears.</param>
    /// <param name="Uncertainty">Half-width of the range in which it is expected.</param>
    /// <param name="Caveats">What to know about this answer, one sentence each.</param>
    /// <param name="Reason">Why the rest is not known, one sentence.</param>
    public sealed record SolidusOnly(Temperature Solidus, TemperatureDelta Uncertainty, IReadOnlyList<string> Caveats, string Reason) : MeltingOutcome
    {
        /// <inheritdoc/>
        public override string? Lack => Reason;
    }

    /// <summary>The computation did not converge.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record NotConverged(string Reason) : MeltingOutcome
    {
        /// <inheritdoc/>
        public override string? Lack => Reason;
    }

    /// <summary>The composition is outside the model.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record OutsideModel(string Reason) : MeltingOutcome
    {
        /// <inheritdoc/>
        public override string? Lack => Reason;
    }
}
