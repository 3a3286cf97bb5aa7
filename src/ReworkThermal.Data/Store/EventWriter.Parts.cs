using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;

namespace ReworkThermal.Data.Store;

/// <summary>The parts that events are made of: pins, tools, heated pads, series, lists.</summary>
internal sealed partial class EventWriter
{
    private void Pin(Pin pin)
    {
        _json.WriteString("number", pin.Number.Value);
        _json.WriteString("name", pin.Name);
        _json.WriteNumber("row", pin.Row);
        _json.WriteNumber("position_pitches", pin.Position);
        switch (pin.Duty)
        {
            case PinDuty.Wired wired:
                _json.WriteString("duty", "wired");
                _json.WriteString("destination", wired.Destination);
                break;
            case PinDuty.Ground:
                _json.WriteString("duty", "ground");
                break;
            case PinDuty.Shield shield:
                _json.WriteString("duty", "shield");
                _json.WriteString("shield_bond", shield.Bond.Word());
                break;
            default:
                _json.WriteString("duty", "no_connect");
                break;
        }

        Optional("current_a", pin.Current?.Amperes);
        Optional("pair", pin.Pair);
    }

    private void Share(HeatedPad share)
    {
        _json.WriteString("pad", share.Pad.Value);
        _json.WriteBoolean("touched", share.Touched);
        if (share.Melted is bool melted)
        {
            _json.WriteBoolean("melted", melted);
        }

        if (share.Series is { } series)
        {
            Series(series);
        }
    }

    private void Tool(ToolSetting tool)
    {
        _json.WriteString("tool", tool switch
        {
            ToolSetting.Iron => "iron",
            ToolSetting.HotAir => "hot_air",
            ToolSetting.Preheater => "preheater",
            ToolSetting.Bath => "bath",
            _ => throw new InvalidOperationException($"no word for {tool.GetType().Name}"),
        });
        Optional("profile", tool.Profile);
        _json.WriteNumber("set_c", tool.Set.DegreesCelsius);
        Optional("contact", (tool as ToolSetting.Iron)?.Contact?.Word());
        if (tool is ToolSetting.HotAir air)
        {
            _json.WriteNumber("flow_lpm", air.Flow.LitersPerMinute);
            Optional("distance_mm", air.Distance?.Millimeters);
        }
    }

    private void Added(AddedSolder? added)
    {
        Optional("added_alloy", added?.Designation);
        Optional("added_mass_mg", added?.Mass?.Milligrams);
    }

    private void Series(InterfaceSeries series)
    {
        if (_aside is not null)
        {
            _json.WriteNumber("series", _aside.Count);
            _aside.Add(series);
            return;
        }

        _json.WriteStartObject("series");
        _json.WriteString("origin", series.Origin.Word());
        if (series.Origin == SeriesOrigin.Simulated)
        {
            _json.WriteNumber("max_error_k", series.MaxError.Kelvins);
        }

        Numbers("time_s", series.History.Seconds);
        Numbers("temperature_c", series.History.Celsius);
        _json.WriteEndObject();
    }

    private void Numbers(string name, ReadOnlySpan<double> numbers)
    {
        _json.WriteStartArray(name);
        foreach (double number in numbers)
        {
            _json.WriteNumberValue(number);
        }

        _json.WriteEndArray();
    }

    private void Pads(IReadOnlyList<PadId> pads)
    {
        _json.WriteStartArray("pads");
        foreach (PadId pad in pads)
        {
            _json.WriteStringValue(pad.Value);
        }

        _json.WriteEndArray();
    }

    private void List<T>(string name, IReadOnlyList<T> items, Action<T> write)
    {
        _json.WriteStartArray(name);
        foreach (T item in items)
        {
            _json.WriteStartObject();
            write(item);
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
    }

    private void Optional(string name, string? text)
    {
        if (text is not null)
        {
            _json.WriteString(name, text);
        }
    }

    private void Optional(string name, double? number)
    {
        if (number is double value)
        {
            _json.WriteNumber(name, value);
        }
    }
}
