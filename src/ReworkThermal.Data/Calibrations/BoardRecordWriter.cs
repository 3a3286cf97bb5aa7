using System.Globalization;
using System.Text;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Calibration;

namespace ReworkThermal.Data.Calibrations;

/// <summary>Writes a record as TOML.</summary>
internal static class BoardRecordWriter
{
    /// <summary>The text of a record.</summary>
    internal static string TextOf(BoardRecord record)
    {
        StringBuilder text = new();
        text.Append("# Touches observed on one model of board and what they taught. Written by the program; \"calibrate\" changes it.\n");
        Text(text, "board", record.Board);
        foreach (ObservedTouch touch in record.Touches)
        {
            text.Append("\n[[touch]]\n");
            Touch(text, touch);
        }

        if (record.Learned is { } learned)
        {
            // In standard deviations of the ranges: contact of tip and joint, copper of the planes, tip temperature.
            text.Append("\n[learned]\n");
            Number(text, "observations", learned.Observations);
            Numbers(text, "deviations", learned.Deviations);
            for (int i = 0; i < learned.Covariance.Count; i++)
            {
                Numbers(text, string.Create(CultureInfo.InvariantCulture, $"covariance_{i + 1}"), learned.Covariance[i]);
            }
        }

        return text.ToString();
    }

    private static void Touch(StringBuilder text, ObservedTouch touch)
    {
        Number(text, "number", touch.Number);
        Text(text, "joint", touch.Joint);
        Text(text, "side", touch.Side.Word());
        Quantity(text, "ambient", touch.Ambient.DegreesCelsius, "C");
        Text(text, "contact", touch.Contact.Word());
        Text(text, "solder", touch.Solder);
        if (touch.Added is { } added)
        {
            Text(text, "added", added);
            Quantity(text, "added_mass", touch.AddedMass.Milligrams, "mg");
        }

        Text(text, "iron", touch.Iron);
        Quantity(text, "set", touch.Set.DegreesCelsius, "C");
        if (touch is { Preheater: { } preheater, Board: { } board })
        {
            Text(text, "preheater", preheater);
            Quantity(text, "board_temperature", board.DegreesCelsius, "C");
        }

        if (touch.Origin is { } origin)
        {
            Text(text, "origin", origin);
        }

        switch (touch.Seen)
        {
            case Sighting.Flowed flowed:
                Quantity(text, "flowed_after", flowed.After.Seconds, "s");
                break;
            case Sighting.FlowedWithin by:
                Quantity(text, "flowed_within", by.Within.Seconds, "s");
                break;
            case Sighting.NotFlowed not:
                Quantity(text, "not_flowed_within", not.Within.Seconds, "s");
                break;
            case Sighting.Reading reading:
                Text(text, "probe", reading.Probe);
                Quantity(text, "after", reading.After.Seconds, "s");
                Quantity(text, "reading", reading.Value.DegreesCelsius, "C");
                break;
            default:
                throw new ArgumentException("unknown kind of sighting", nameof(touch));
        }
    }

    private static void Text(StringBuilder text, string name, string value)
    {
        text.Append(name).Append(" = \"");
        foreach (char c in value)
        {
            _ = c switch
            {
                '"' or '\\' => text.Append('\\').Append(c),
                < ' ' or '\u007f' => text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}"),
                _ => text.Append(c),
            };
        }

        text.Append("\"\n");
    }

    private static void Quantity(StringBuilder text, string name, double value, string unit) =>
        text.Append(CultureInfo.InvariantCulture, $"{name} = \"{Rounded(value)} {unit}\"\n");

    private static void Number(StringBuilder text, string name, int value) => text.Append(CultureInfo.InvariantCulture, $"{name} = {value}\n");

    private static void Numbers(StringBuilder text, string name, IEnumerable<double> values) =>
        text.Append(CultureInfo.InvariantCulture, $"{name} = [{string.Join(", ", values.Select(v => v.ToString("R", CultureInfo.InvariantCulture)))}]\n");

    // Conversions between units leave digits that nobody typed.
    private static string Rounded(double value) => Math.Round(value, 6).ToString("0.######", CultureInfo.InvariantCulture);
}
