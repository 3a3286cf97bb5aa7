namespace ReworkThermal.Core.Jobs;

/// <summary>What one pad had in one exposure.</summary>
/// <param name="Pad">The pad.</param>
/// <param name="Touched">Whether the tool was on this pad, and not only near it.</param>
/// <param name="Melted">Whether the solder on it melted; null when nobody knows.</param>
/// <param name="Series">
/// Temperature at the interface of pad and laminate, or null when none could be had: the touch counts all the same and must be
/// simulated when it is judged.
/// </param>
public sealed record HeatedPad(PadId Pad, bool Touched, bool? Melted, InterfaceSeries? Series)
{
    /// <summary>Whether the joint may have changed electrically.</summary>
    public bool Disturbed => Touched || Melted == true;
}
