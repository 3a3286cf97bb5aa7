using System.Globalization;
using ReworkThermal.Core.Phases;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>
/// Melting temperatures against <c>reference/melting.csv</c>. Rows that are seen are binding within the tolerance of the row; rows
/// from memory, and rows with a stated reason, are printed for information only.
/// </summary>
public sealed class PhasesMeltingTableTests(ITestOutputHelper output)
{
    [Fact]
    public void MeltingTemperatures_OfPublishedAlloys_AgreeWithinTheToleranceOfEachRow()
    {
        List<string> misses = [];
        int binding = 0;
        output.WriteLine($"{"row",-19}{"binds",-6}{"compare",-18}{"dSolidus",9}{"dLiquidus",10}{"dFlow",8}{"stated ±",9}  reason");
        foreach (MeltingRow row in MeltingRow.Load())
        {
            MeltingBehaviour melting = PhasesData.Melt(row.Alloy);
            double? solidus = melting.Solidus.DegreesCelsius - row.SolidusCelsius;
            double? liquidus = melting.Liquidus.DegreesCelsius - row.LiquidusCelsius;
            double? flow = melting.Flow.DegreesCelsius - row.LiquidusCelsius;
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{row.Name,-19}{(row.Gate ? "yes" : "no"),-6}{row.Compare,-18}{solidus,9:0.0}{liquidus,10:0.0}{flow,8:0.0}{melting.Uncertainty.Kelvins,9:0.0}  {row.Reason}"));
            if (!row.Gate)
            {
                continue;
            }

            binding++;
            if (row.Compare.Contains("solidus", StringComparison.Ordinal) && !(Math.Abs(solidus!.Value) <= row.SolidusTolerance!.Value))
            {
                misses.Add($"{row.Name}: solidus off by {solidus:0.00} K, allowed {row.SolidusTolerance} K");
            }

            double? upper = row.Compare.Contains("flow", StringComparison.Ordinal) ? flow
                : row.Compare.Contains("liquidus", StringComparison.Ordinal) ? liquidus : null;
            if (upper is { } difference && !(Math.Abs(difference) <= row.LiquidusTolerance!.Value))
            {
                misses.Add($"{row.Name}: {row.Compare} off by {difference:0.00} K, allowed {row.LiquidusTolerance} K");
            }
        }

        output.WriteLine($"{binding} binding rows");
        Assert.True(binding >= 40, $"only {binding} binding rows");
        Assert.Empty(misses);
    }
}
