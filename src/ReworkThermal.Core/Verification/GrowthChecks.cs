using ReworkThermal.Core.Damage.Mechanisms;
using UnitsNet;

namespace ReworkThermal.Core.Verification;

/// <summary>Growth of the intermetallic layer, and copper lost to liquid tin, beside published experiments.</summary>
/// <param name="copper">The checks of dissolution.</param>
/// <param name="growth">The law of growth with the shipped figures.</param>
internal sealed class GrowthChecks(CopperChecks copper, IntermetallicGrowth growth)
{
    internal ComparedValue Row(ReferenceRow row)
    {
        double celsius = row.Number("temperature_c");
        (string subject, double? computed) = row["kind"] switch
        {
            "intermetallic" => ($"intermetallic layer on copper after {Duration.FromSeconds(row.Number("seconds")).Days:0} days at {celsius:0} °C", Thickness(row)),
            "tin-rate" => ($"copper lost to still liquid tin at {celsius:0} °C", copper.TinRate(celsius)),
            string other => throw new FormatException($"{row.Table}: unknown kind '{other}'"),
        };
        return ComparedValue.Binding(VerificationArea.Damage, row, subject, row["unit"], row.Number("value"), row.Number("room"), computed, row["reason"]);
    }

    private double Thickness(ReferenceRow row)
    {
        double square = growth.SolidSquare(Temperature.FromDegreesCelsius(row.Number("temperature_c")), Duration.FromSeconds(row.Number("seconds")));
        return growth.ThicknessUm(Duration.Zero, square).Central;
    }
}
