namespace ReworkThermal.App.Screens.Update;

/// <summary>Kinds of reasons to record.</summary>
internal enum RecordedForKind
{
    /// <summary>Nothing waits for it.</summary>
    ItsOwnSake,

    /// <summary>The text being typed closes when it is accepted.</summary>
    Entry,

    /// <summary>A touch began.</summary>
    TouchStart,

    /// <summary>A touch ended.</summary>
    TouchEnd,

    /// <summary>The time to flow was taken, or bounded.</summary>
    Lesson,
}
