namespace ReworkThermal.Core.Jobs;

/// <summary>Something that counts, with the entry that recorded it.</summary>
/// <typeparam name="T">What was recorded.</typeparam>
/// <param name="Number">Number of the entry.</param>
/// <param name="At">When it was recorded.</param>
/// <param name="What">What was recorded.</param>
public sealed record Logged<T>(int Number, DateTimeOffset At, T What);
