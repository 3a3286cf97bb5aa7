using System.Globalization;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.Core.Reports;

/// <summary>Residuals of this project's own fits, recomputed, as lines of a data check.</summary>
public static class FitLines
{
    /// <summary>Recomputes every point that a fit used.</summary>
    /// <param name="database">The data with their fitted points.</param>
    /// <param name="folder">Folder of the system files, as shown in the lines.</param>
    /// <returns>One line per point, in file order.</returns>
    public static IReadOnlyList<CheckLine> For(ThermodynamicDatabase database, string folder) =>
        [.. FitChecks.Recompute(database).Select(c => new CheckLine(InvariantLines.FileOf(c.System, folder), SubjectOf(c.Point), OutcomeOf(c)))];

    private static string SubjectOf(FitPoint point) => string.Create(
        CultureInfo.InvariantCulture,
        $"fit: {point.Solid} {(point.IsBound ? "below" : "at")} {point.Celsius:0.0} °C from {point.Liquid}");

    private static CheckOutcome OutcomeOf(FitComparison comparison)
    {
        if (comparison.ResidualKelvin is not { } residual)
        {
            return new CheckOutcome.Failed("the solid is in equilibrium with this liquid at no temperature");
        }

        string figures = string.Create(
            CultureInfo.InvariantCulture,
            $"residual {residual:+0.00;-0.00;0.00} K, weight {comparison.Point.SigmaKelvin:0.##} K");
        return comparison.Unchanged
            ? new CheckOutcome.Passed(figures)
            : new CheckOutcome.Failed(string.Create(CultureInfo.InvariantCulture, $"{figures}, but the file says {comparison.Point.ResidualKelvin:0.00} K: a drift of program or data"));
    }
}
