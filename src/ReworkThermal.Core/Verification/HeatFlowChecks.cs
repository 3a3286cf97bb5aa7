using ReworkThermal.Core.Verification.Textbook;

namespace ReworkThermal.Core.Verification;

/// <summary>Textbook problems of heat flow beside their exact or agreed solutions.</summary>
internal static class HeatFlowChecks
{
    /// <summary>Runs one case.</summary>
    /// <param name="rows">All rows of the case, in order.</param>
    /// <returns>One comparison a row; none for a case that is not posed.</returns>
    internal static IReadOnlyList<ComparedValue> Case(IReadOnlyList<ReferenceRow> rows)
    {
        if (!TextbookCases.Posed.TryGetValue(rows[0]["case"], out Func<double[]>? pose))
        {
            return [];
        }

        double[] computed = pose();
        return computed.Length == rows.Count
            ? [.. rows.Zip(computed, Compare)]
            : throw new FormatException($"{rows[0].Table}: case {rows[0]["case"]} has {rows.Count} rows, but its problem gives {computed.Length} figures");
    }

    /// <summary>Runs one case of a joint that was run in three dimensions elsewhere.</summary>
    /// <param name="rows">All rows of the case, times not falling.</param>
    /// <returns>One comparison a row.</returns>
    internal static IReadOnlyList<ComparedValue> Joint(IReadOnlyList<ReferenceRow> rows)
    {
        IReadOnlyList<double> computed = ThreeDimensionalJoint.Figures(rows[0]["case"], rows.Select(r => (r.Number("time_s"), r["place"])));
        return [.. rows.Zip(computed, (row, celsius) => ComparedValue.Binding(
            VerificationArea.ThreeDimensional,
            row,
            $"{row["case"]}: {row["place"]}, t={row["time_s"]} s",
            "°C",
            row.Number("value_c"),
            row.Number("tolerance_k"),
            celsius))];
    }

    private static ComparedValue Compare(ReferenceRow row, double computed)
    {
        string subject = row["place"].Length == 0 ? $"{row["case"]}: {row["quantity"]}" : $"{row["case"]}: {row["quantity"]}, {row["place"]}";
        return ComparedValue.Binding(VerificationArea.HeatFlow, row, subject, UnitOf(row), row.Number("value"), row.Number("tolerance"), computed);
    }

    private static string UnitOf(ReferenceRow row) => row["unit"] switch
    {
        "C" => "°C",
        "-" => string.Empty,
        "W/m2" => "W/m²",
        "J/m2" => "J/m²",
        string unit => unit,
    };
}
