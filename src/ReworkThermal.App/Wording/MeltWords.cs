namespace ReworkThermal.App.Wording;

/// <summary>Words of the melting report.</summary>
internal static class MeltWords
{
    internal const string Flow = "flow temperature";

    internal const string FlowMeaning = "97 % of the mass is liquid: from here on the joint moves";

    internal const string Liquidus = "liquidus";

    internal const string LiquidusMeaning = "nothing solid is left, not even the last hard particles";

    internal const string Solidus = "solidus";

    internal const string SolidusMeaning = "first liquid on slow heating";

    internal const string PastyRange = "pasty range";

    internal const string PastyRangeMeaning = "liquidus less solidus: do not move the joint while it cools through it";

    internal const string ScheilEnd = "Scheil end";

    internal const string ScheilEndMeaning = "last liquid on real cooling, with no diffusion in the solid";

    internal const string LiquidAt100 = "liquid at 100 °C";

    internal const string LiquidAt100Meaning = "share of the mass still liquid at 100 °C on real cooling";

    internal const string LatentHeat = "latent heat";

    internal const string LatentHeatMeaning = "from the same Gibbs functions as the temperatures";

    internal const string Density = "density";

    internal const string DensityMeaning = "near 20 °C, elements' volumes added, about 1 %";

    internal const string PhasesHeading = "Phases";

    internal static readonly string[] PhaseColumns = ["phase", ">from °C", ">to °C", ">at most", "what it is"];

    internal static string Title(string composition) => $"Melting of {composition} (percent by mass)";

    internal static string UncertaintyHeading(string range) => $"Every temperature is ± {range}";

    internal static string NotConverged(string reason) => $"There is no certified answer: {reason}";
}
