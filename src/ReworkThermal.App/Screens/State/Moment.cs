namespace ReworkThermal.App.Screens.State;

/// <summary>A moment by two clocks: one that never jumps, for lengths of time, and the calendar's, for the record.</summary>
/// <param name="Steady">Time since the program began.</param>
/// <param name="Wall">Time of day, UTC.</param>
internal readonly record struct Moment(TimeSpan Steady, DateTimeOffset Wall);
