namespace ReworkThermal.Core.Planning;

/// <summary>What came of asking what the next touch would do.</summary>
public abstract record ForecastOutcome
{
    private ForecastOutcome()
    {
    }

    /// <summary>It was computed.</summary>
    /// <param name="Forecast">The answer.</param>
    public sealed record Made(TouchForecast Forecast) : ForecastOutcome;

    /// <summary>It could not be.</summary>
    /// <param name="Reason">One clause.</param>
    public sealed record Failed(string Reason) : ForecastOutcome;
}
