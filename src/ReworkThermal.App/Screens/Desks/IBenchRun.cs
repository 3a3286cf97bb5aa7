using ReworkThermal.Core.Damage.Pulling;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>One touch being simulated, in step with the clock. Called from one background thread only.</summary>
internal interface IBenchRun
{
    /// <summary>The touch after so much time with the tool on; times rise from call to call.</summary>
    public BenchReading Advance(Duration elapsed);

    /// <summary>The tool comes off.</summary>
    public BenchRelease Release(Duration elapsed);

    /// <summary>How long to wait after the release before the pad may be touched again, or null when that cannot be told.</summary>
    public CoolDown? Wait();

    /// <summary>The joint so long after the tool came off; times rise from call to call.</summary>
    public BenchReading Cool(Duration sinceRelease);
}
