namespace ReworkThermal.Data.Tests.Store;

/// <summary>A clock that moves on by one second at every look.</summary>
public sealed class FixedClock : TimeProvider
{
    private DateTimeOffset _now = new(2026, 3, 1, 8, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => _now = _now.AddSeconds(1);
}
