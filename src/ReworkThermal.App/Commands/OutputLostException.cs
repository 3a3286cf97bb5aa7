namespace ReworkThermal.App.Commands;

/// <summary>Standard output cannot be written: it is closed, its disk is full, or nobody reads it any more.</summary>
/// <param name="why">What the system says.</param>
/// <param name="byReader">Whether the reader went away, which is no trouble of its own: it has read enough.</param>
#pragma warning disable CA1032, RCS1194 // Thrown in one place only, and never without a reason.
internal sealed class OutputLostException(string why, bool byReader) : Exception(why)
#pragma warning restore CA1032, RCS1194
{
    /// <summary>Whether the reader went away.</summary>
    internal bool ByReader => byReader;
}
