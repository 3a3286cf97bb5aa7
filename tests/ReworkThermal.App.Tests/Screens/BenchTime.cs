namespace ReworkThermal.App.Tests.Screens;

/// <summary>Clocks that stand still until a test moves them.</summary>
internal sealed class BenchTime : TimeProvider
{
    private long _ticks;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override long GetTimestamp() => Volatile.Read(ref _ticks);

    public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2026, 3, 2, 9, 0, 0, TimeSpan.Zero).AddTicks(Volatile.Read(ref _ticks));

    internal void Move(TimeSpan by) => Interlocked.Add(ref _ticks, by.Ticks);
}
