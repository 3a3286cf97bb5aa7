namespace ReworkThermal.App.Wording;

/// <summary>Words of a dilution.</summary>
internal static class DilutionWords
{
    internal const string NoneReaches = "No alloy at hand does it within the amounts allowed.";

    internal const string ExcludedHeading = "Left out";

    internal const string HasLead = "contains lead, and only lead-free alloys are wanted";

    internal const string None = "-";

    internal static readonly string[] Columns =
        ["add", ">share of mix", ">mass", ">wire", ">flow °C", ">liquidus", ">solidus", ">Scheil end", ">K"];

    internal static string Title(string joint) => $"Dilution of the solder in {joint}";

    internal static string InTheJoint(string mass, string solder) => $"In the joint: {mass} of {solder}.";
}
