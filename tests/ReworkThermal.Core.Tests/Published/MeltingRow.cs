using System.Globalization;
using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>A line of <c>reference/melting.csv</c>: published melting temperatures of an alloy, with tolerance and source.</summary>
internal sealed record MeltingRow(
    string Name,
    MassFractions Alloy,
    double? SolidusCelsius,
    double? LiquidusCelsius,
    string Compare,
    double? SolidusTolerance,
    double? LiquidusTolerance,
    bool Gate,
    string Mark,
    string Reason)
{
    internal static IReadOnlyList<MeltingRow> Load()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> table = ReferenceTable.Read("melting.csv");
        return [.. table.Select(fields => new MeltingRow(
            fields["row"],
            ReferenceTable.Composition(fields),
            Optional(fields["solidus_c"]),
            Optional(fields["liquidus_c"]),
            fields["compare"],
            Optional(fields["solidus_tolerance_k"]),
            Optional(fields["liquidus_tolerance_k"]),
            fields["gate"] == "yes",
            fields["mark"],
            fields["reason"]))];
    }

    private static double? Optional(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);
}
