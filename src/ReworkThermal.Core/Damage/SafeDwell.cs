using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>The longest dwell that keeps a budget within a limit.</summary>
public abstract record SafeDwell
{
    private SafeDwell()
    {
    }

    /// <summary>A longest dwell exists.</summary>
    /// <param name="Longest">The dwell; a longer one breaks the limit.</param>
    /// <param name="After">The budget after it.</param>
    public sealed record UpTo(Duration Longest, HeatBudget After) : SafeDwell;

    /// <summary>The longest dwell that was asked about still keeps the limit.</summary>
    /// <param name="Asked">That dwell.</param>
    /// <param name="After">The budget after it.</param>
    public sealed record WholeRange(Duration Asked, HeatBudget After) : SafeDwell;

    /// <summary>No dwell keeps the limit: one melt already breaks it, or the pad is over it now.</summary>
    /// <param name="Now">The budget before the touch.</param>
    /// <param name="Reason">One sentence.</param>
    public sealed record None(HeatBudget Now, string Reason) : SafeDwell;
}
