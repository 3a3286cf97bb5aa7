namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>The check list of a job with what has been probed.</summary>
/// <param name="Lines">Every check, in the order to probe them.</param>
public sealed record CheckProgress(IReadOnlyList<CheckLine> Lines)
{
    /// <summary>Number of checks that passed and still count.</summary>
    public int Passed { get; } = Lines.Count(l => l.Standing == CheckStanding.Passed);

    /// <summary>Number of checks that failed.</summary>
    public int Failed { get; } = Lines.Count(l => l.Standing == CheckStanding.Failed);

    /// <summary>Number of checks that were never probed.</summary>
    public int Open { get; } = Lines.Count(l => l.Standing == CheckStanding.Open);

    /// <summary>Number of checks that a later touch, wire or look made worthless.</summary>
    public int Stale { get; } = Lines.Count(l => l.Standing == CheckStanding.Stale);

    /// <summary>Whether every check passed and there is at least one.</summary>
    public bool Proven => Lines.Count > 0 && Passed == Lines.Count;

    /// <summary>The check to probe now, or null when none is open or stale.</summary>
    public CheckLine? Upcoming => Lines.FirstOrDefault(l => l.Standing is CheckStanding.Open or CheckStanding.Stale);

    /// <summary>Pins that a failed check leads back to, each once.</summary>
    public IReadOnlyList<PadId> Suspects =>
        [.. Lines.Where(l => l.Standing == CheckStanding.Failed).SelectMany(l => l.Check.Probed).Distinct()];
}
