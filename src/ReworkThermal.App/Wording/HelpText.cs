namespace ReworkThermal.App.Wording;

/// <summary>Texts of <c>--help</c>.</summary>
internal static class HelpText
{
    internal const string Program =
        "Computes what a mixed solder joint melts at, what a plated barrel in this board needs to flow, and how much heat a pad has had.";

    internal const string Json = "Give the answer as JSON; field names carry their units.";

    internal const string Melt = "Melting behaviour of a solder or a mix.";

    internal const string Composition =
        "Elements with percent by mass, like Sn96.5Ag3Cu0.5; the first may stand without a number as the balance, like SnAg3Cu0.5.";
}
