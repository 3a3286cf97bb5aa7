namespace ReworkThermal.Core.Damage.Exposures;

/// <summary>
/// What one pad has accumulated: assumed earlier heat and every exposure since. Immutable; made and advanced by
/// <see cref="DamageModel"/>, and the same again when the same exposures are replayed.
/// </summary>
public sealed record PadDamage
{
    internal PadDamage(PriorHeat prior) => Prior = prior;

    /// <summary>What was assumed about earlier heat.</summary>
    public PriorHeat Prior { get; }

    /// <summary>Number of exposures counted.</summary>
    public int Exposures { get; internal init; }

    /// <summary>Number of melts since the assumed earlier heat.</summary>
    public int LoggedMelts { get; internal init; }

    /// <summary>Highest interface temperature of the exposures [°C]; null before the first.</summary>
    public double? PeakCelsius { get; internal init; }

    /// <summary>Number of melts, earlier heat included.</summary>
    public Spread Melts => new(Mild.Melts, Central.Melts, Harsh.Melts);

    /// <summary>Melted exposures whose solder is unknown, so that their copper loss is not counted.</summary>
    public int MeltsWithoutCharge { get; internal init; }

    internal DamageTrack Mild { get; init; }

    internal DamageTrack Central { get; init; }

    internal DamageTrack Harsh { get; init; }

    internal bool MoltenAtEnd { get; init; }

    internal double LiquidSeconds { get; init; }

    internal double IntermetallicSquareUm2 { get; init; }
}
