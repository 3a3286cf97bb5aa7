namespace ReworkThermal.App.Wording;

/// <summary>Words that several answers share.</summary>
internal static class CommonWords
{
    internal const string Notes = "Assumed and left out";

    internal const string Sources = "Sources";

    internal const string Cautions = "Cautions";
}
