namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>One thing to probe with a meter, unpowered. Two checks are equal when they probe the same places.</summary>
public abstract record ElectricalCheck
{
    private ElectricalCheck()
    {
    }

    /// <summary>The pins the probes are put on, besides the destination or ground.</summary>
    public abstract IReadOnlyList<PadId> Probed { get; }

    /// <summary>The pin must conduct to where it belongs: its destination, ground, or the shell.</summary>
    public sealed record Continuity(PadId Pin) : ElectricalCheck
    {
        /// <inheritdoc/>
        public override IReadOnlyList<PadId> Probed => [Pin];
    }

    /// <summary>Two neighbours must not conduct to each other; the order of the two does not matter.</summary>
    public sealed record Isolation : ElectricalCheck
    {
        /// <summary>Creates the check.</summary>
        /// <param name="one">A pin.</param>
        /// <param name="other">Another pin.</param>
        /// <exception cref="ArgumentException">Both are the same pin.</exception>
        public Isolation(PadId one, PadId other)
        {
            ArgumentNullException.ThrowIfNull(one);
            ArgumentNullException.ThrowIfNull(other);
            int order = one.CompareTo(other);
            if (order == 0)
            {
                throw new ArgumentException("a pin cannot be isolated from itself", nameof(other));
            }

            (First, Second) = order < 0 ? (one, other) : (other, one);
        }

        /// <summary>The pin whose name comes first.</summary>
        public PadId First { get; }

        /// <summary>The pin whose name comes second.</summary>
        public PadId Second { get; }

        /// <inheritdoc/>
        public override IReadOnlyList<PadId> Probed => [First, Second];
    }

    /// <summary>The pin must not conduct to ground.</summary>
    public sealed record GroundIsolation(PadId Pin) : ElectricalCheck
    {
        /// <inheritdoc/>
        public override IReadOnlyList<PadId> Probed => [Pin];
    }
}
