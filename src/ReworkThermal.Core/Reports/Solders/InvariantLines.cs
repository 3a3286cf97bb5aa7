using System.Globalization;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.Core.Reports.Solders;

/// <summary>Published reactions of the thermodynamic files, recomputed, as lines of a data check.</summary>
public static class InvariantLines
{
    /// <summary>Recomputes every listed reaction.</summary>
    /// <param name="database">The data with their listed reactions.</param>
    /// <param name="folder">Folder of the system files, as shown in the lines.</param>
    /// <returns>One line per reaction, in file order.</returns>
    public static IReadOnlyList<CheckLine> For(ThermodynamicDatabase database, string folder) =>
        [.. InvariantChecks.Recompute(database).Select(c => new CheckLine(FileOf(c.System, folder), c.Listed.Reaction, OutcomeOf(c)))];

    /// <summary>How the file of a system is shown.</summary>
    internal static string FileOf(SystemDescription system, string folder) => system.IsOwn ? system.File : $"{folder}/{system.File}";

    private static CheckOutcome OutcomeOf(InvariantComparison comparison)
    {
        if (comparison.ComputedCelsius is not { } computed)
        {
            return new CheckOutcome.Failed(string.Create(
                CultureInfo.InvariantCulture,
                $"the reaction was not met on cooling {comparison.Listed.Through}; published {comparison.Listed.Celsius:0.0} °C"));
        }

        string figures = string.Create(
            CultureInfo.InvariantCulture,
            $"{computed:0.0} °C, published {comparison.Listed.Celsius:0.0} °C, allowed ± {comparison.Listed.ToleranceKelvin:0.#} K");
        return (comparison.Agrees, comparison.Unchanged) switch
        {
            (true, true) => new CheckOutcome.Passed(figures),
            (true, false) => new CheckOutcome.Failed(string.Create(
                CultureInfo.InvariantCulture,
                $"{figures}, but the file says that {comparison.Listed.ComputedCelsius:0.00} °C is computed: a drift of program or data")),
            _ => new CheckOutcome.Failed($"outside its tolerance: {figures}{LiquidOf(comparison)}"),
        };
    }

    private static string LiquidOf(InvariantComparison comparison) => comparison is { Listed.Liquid: { } published, ComputedLiquid: { } computed }
        ? $"; liquid {computed}, published {published}"
        : string.Empty;
}
