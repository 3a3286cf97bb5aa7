namespace ReworkThermal.App.Commands;

/// <summary>How far questions may go, the same on the command line and on the screens.</summary>
internal static class AskLimits
{
    /// <summary>Greatest mass share of an added alloy in a mix [1].</summary>
    internal const double MostShare = 0.9;

    /// <summary>Most add-and-remove passes that are followed.</summary>
    internal const int MostPasses = 12;

    /// <summary>Lowest setting of an iron that is taken for one [°C].</summary>
    internal const double LeastIronC = 100;

    /// <summary>Highest setting of an iron that is taken for one [°C].</summary>
    internal const double MostIronC = 500;

    /// <summary>Lowest setting of hot air that is taken for one [°C].</summary>
    internal const double LeastAirC = 50;

    /// <summary>Highest setting of hot air that is taken for one [°C].</summary>
    internal const double MostAirC = 600;

    /// <summary>Least flow of hot air [L/min].</summary>
    internal const double LeastAirFlow = 0.1;

    /// <summary>Greatest flow of hot air [L/min].</summary>
    internal const double MostAirFlow = 1000;

    /// <summary>Greatest resistance that a meter may show as a number [ohm].</summary>
    internal const double MostOhms = 1e9;
}
