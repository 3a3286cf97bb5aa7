namespace ReworkThermal.App.Screens.Desks;

/// <summary>Simulates touches while they happen. Called from one background thread only.</summary>
internal interface IBenchRuns
{
    /// <summary>Prepares a touch on a board at rest, or still warm from the touch before.</summary>
    public BenchStart Begin(TouchSetup setup);
}
