namespace ReworkThermal.App.Screens.Desks;

/// <summary>What came of preparing a simulation.</summary>
internal abstract record BenchStart
{
    private BenchStart()
    {
    }

    /// <summary>It runs.</summary>
    internal sealed record Ready(IBenchRun Run, BenchForecast Forecast) : BenchStart;

    /// <summary>There is a clock, but no simulation.</summary>
    /// <param name="Reason">One clause: what is missing.</param>
    internal sealed record ClockOnly(string Reason) : BenchStart;
}
