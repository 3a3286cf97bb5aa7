using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Pinouts;

/// <summary>Reads the pin-out of a connector from <c>profiles/pinouts</c>.</summary>
public static class PinoutFile
{

    private static readonly Dictionary<string, Func<FieldReader, PinDuty>> _duties = new(StringComparer.Ordinal)
    {
        ["wired"] = static pin => new PinDuty.Wired(pin.Text("destination")),
        ["ground"] = static _ => new PinDuty.Ground(),
        ["shield"] = static pin => new PinDuty.Shield(pin.OneOf<ShieldBond>("bond")),
        ["no-connect"] = static _ => new PinDuty.NoConnect(),
    };

    /// <summary>Reads a pin-out.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The pin-out.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    public static Pinout Load(string path)
    {
        FieldReader root = FieldReader.Open(path);
        string name = root.Text("name");
        _ = root.Provenance();
        List<Pin> pins = [];
        foreach (FieldReader pin in root.Tables("pin"))
        {
            pins.Add(ReadPin(pin));
            if (PinRegister.Fault(pins) is { } fault)
            {
                throw pin.Wrong(fault);
            }
        }

        root.Finish();
        return pins.Count > 0 ? new Pinout(name, PinRegister.Of(pins)) : throw root.Wrong("pin", "at least one [[pin]] is needed");
    }

    private static Pin ReadPin(FieldReader pin)
    {
        string number = pin.Text("number");
        return PadId.Fault(number) is { } fault
            ? throw pin.Wrong("number", fault)
            : new Pin(
                new PadId(number),
                pin.Text("name"),
                pin.Whole("row", 1, 1000),
                pin.Number("position", -10_000, 10_000),
                pin.OneOf("duty", _duties)(pin),
                pin.Has("current") ? pin.Quantity("current", UnitTable.Currents, ElectricCurrent.Zero) : null,
                pin.TextOrNull("pair"));
    }
}
