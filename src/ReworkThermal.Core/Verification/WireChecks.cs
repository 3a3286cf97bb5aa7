using ReworkThermal.Core.Jobs.Wiring;
using UnitsNet;

namespace ReworkThermal.Core.Verification;

/// <summary>Wire gauges beside a published table; the rooms and their reasons stand in the head of the table.</summary>
internal static class WireChecks
{
    private const double InchesRoom = 1e-5;
    private const double AreaRoom = 0.0012;
    private const double ResistanceRoom = 0.001;

    internal static IEnumerable<ComparedValue> Gauge(ReferenceRow row)
    {
        int number = (int)row.Number("gauge");
        WireGauge wire = new(number);
        double ohms = CopperConductor.Resistance(wire.Section, Length.FromFeet(1000), Temperature.FromDegreesCelsius(20)).Ohms;
        yield return Row("diameter", "in", "inches", InchesRoom, wire.Diameter.Inches);
        yield return Row("area", "circular mils", "circular_mils", AreaRoom * row.Number("circular_mils"), wire.Diameter.Mils * wire.Diameter.Mils);
        yield return Row("resistance of 1000 ft at 20 °C", "Ω", "ohms_per_1000_ft", ResistanceRoom * row.Number("ohms_per_1000_ft"), ohms);

        ComparedValue Row(string quantity, string unit, string column, double room, double computed) =>
            ComparedValue.Binding(VerificationArea.Wires, row, FormattableString.Invariant($"gauge {number}: {quantity}"), unit, row.Number(column), room, computed);
    }
}
