namespace ReworkThermal.App.Wording;

/// <summary>Texts of <c>--help</c>.</summary>
internal static class HelpText
{
    internal const string Program =
        "Computes what a mixed solder joint melts at, what a plated barrel in this board needs to flow, and how much heat a pad has had.";

    internal const string Json = "Give the answer as JSON; field names carry their units.";

    internal const string Melt = "Melting behaviour of a solder or a mix.";

    internal const string Data = "The data files of alloys and profiles.";

    internal const string DataCheck = "Check every file in alloys and profiles: it can be read, its sources are listed, its published points are met.";

    internal const string Curve = "Show liquid fraction, enthalpy and phases against temperature instead of the summary.";

    internal const string Csv = "Also write the figures to this file as comma-separated values.";

    internal const string Plot = "Also draw the figures to this file; its name ends in .svg or .png.";

    internal const string Composition =
        "Elements with percent by mass, like Sn96.5Ag3Cu0.5; the first may stand without a number as the balance, like SnAg3Cu0.5.";
}
