namespace ReworkThermal.App.Screens.Update;

/// <summary>Why an event was recorded, to know what to do with the answer.</summary>
/// <param name="Kind">Which kind of reason.</param>
/// <param name="Turn">Number of the touch, where it is about one.</param>
/// <param name="Lesson">What a timed measurement may teach, where it is one.</param>
internal sealed record RecordedFor(RecordedForKind Kind, int Turn = 0, Desks.Lesson? Lesson = null)
{
    internal static readonly RecordedFor ItsOwnSake = new(RecordedForKind.ItsOwnSake);

    internal static readonly RecordedFor Entry = new(RecordedForKind.Entry);
}
