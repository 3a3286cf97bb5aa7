using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Words that several answers share.</summary>
internal static class CommonWords
{
    internal const string Notes = "Assumed and left out";

    internal const string Sources = "Sources";

    internal const string Cautions = "Cautions";

    internal static string ManySources(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} sources; --json lists them.");
}
