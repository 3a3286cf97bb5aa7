using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Data.Store;

/// <summary>Reads back what <see cref="EventWriter"/> wrote; strict about names, types and the words of closed lists.</summary>
/// <param name="aside">Series kept beside the JSON; null when they are inline.</param>
internal sealed class EventReader(IReadOnlyList<InterfaceSeries>? aside)
{
    /// <summary>Reads the fields of an event.</summary>
    /// <param name="kind">Word for its kind.</param>
    /// <param name="fields">Its object; the caller checks for unknown fields.</param>
    /// <returns>The event.</returns>
    /// <exception cref="RecordFormatException">Something is not in order.</exception>
    internal JobEvent Read(string kind, RecordReader fields)
    {
        try
        {
            return Event(kind, fields);
        }
        catch (ArgumentException problem)
        {
            throw fields.Wrong(problem);
        }
    }

    private JobEvent Event(string kind, RecordReader fields) => kind switch
    {
        EventKinds.JobOpened => new JobEvent.JobOpened(Brief(fields)),
        EventKinds.BriefRevised => new JobEvent.BriefRevised(Brief(fields)),
        EventKinds.PinsRegistered => new JobEvent.PinsRegistered(fields.Objects("pins", Pin)),
        EventKinds.PadRegistered => new JobEvent.PadRegistered(
            Pad(fields, "pad"), fields.Text("description"), fields.TextOrNull("joint")),
        EventKinds.PadStateSeen => new JobEvent.PadStateSeen(
            Pad(fields, "pad"), fields.Word<PadState>("state"), fields.TextOrNull("note")),
        EventKinds.PriorHeatStated => new JobEvent.PriorHeatStated(
            Pads(fields), fields.Word<PriorCondition>("prior_heat"), fields.TextOrNull("note")),
        EventKinds.PlanAccepted => new JobEvent.PlanAccepted(Plan(fields)),
        EventKinds.CautionsShown => new JobEvent.CautionsShown(),
        EventKinds.TouchStarted => new JobEvent.TouchStarted(new TouchStart(
            fields.Word<TouchPurpose>("purpose"), fields.Objects("tools", Tool), Pads(fields), Added(fields), fields.WordOrNull<BoardSide>("side"))),
        EventKinds.ExposureLogged => new JobEvent.ExposureLogged(Exposure(fields), fields.WholeOrNull("ends")),
        EventKinds.TouchDropped => new JobEvent.TouchDropped(fields.Whole("start"), fields.Text("reason")),
        EventKinds.MeasurementTaken => new JobEvent.MeasurementTaken(Measurement(fields)),
        EventKinds.CheckDone => new JobEvent.CheckDone(
            Check(fields), fields.Word<CheckResult>("result"), Reading(fields), fields.TextOrNull("note")),
        EventKinds.WireRun => new JobEvent.WireRun(Wire(fields), fields.TextOrNull("note")),
        EventKinds.NoteTaken => new JobEvent.NoteTaken(fields.Text("text"), fields.TextOrNull("pad") is { } pad ? new PadId(pad) : null),
        EventKinds.EntryVoided => new JobEvent.EntryVoided(fields.Whole("voids"), fields.Text("reason")),
        EventKinds.JobClosed => new JobEvent.JobClosed(fields.TextOrNull("note")),
        EventKinds.JobReopened => new JobEvent.JobReopened(fields.Text("reason")),
        _ => throw fields.Wrong("event", $"is a kind of event that this program does not know: {kind}"),
    };

    private static JobBrief Brief(RecordReader fields) => new(
        fields.Text("label"),
        fields.TextOrNull("board"),
        fields.TextOrNull("joint"),
        fields.TextOrNull("connector"),
        fields.TextOrNull("base_solder"),
        fields.Truth("lead_free_only"));

    private static Pin Pin(RecordReader fields) => new(
        Pad(fields, "number"),
        fields.Text("name"),
        fields.Whole("row"),
        fields.Number("position_pitches"),
        Duty(fields),
        fields.NumberOrNull("current_a") is double amperes ? ElectricCurrent.FromAmperes(amperes) : null,
        fields.TextOrNull("pair"));

    private static PinDuty Duty(RecordReader fields) => fields.Text("duty") switch
    {
        "wired" => new PinDuty.Wired(fields.Text("destination")),
        "ground" => new PinDuty.Ground(),
        "shield" => new PinDuty.Shield(fields.Word<ShieldBond>("shield_bond")),
        "no_connect" => new PinDuty.NoConnect(),
        _ => throw fields.Wrong("duty", "must be one of wired, ground, shield, no_connect"),
    };

    private static AcceptedPlan Plan(RecordReader fields) => new(
        fields.TextOrNull("alloy"),
        Milligrams(fields, "added_mass_mg"),
        Celsius(fields, "iron_set_c"),
        Celsius(fields, "preheat_c"),
        Celsius(fields, "air_set_c"),
        fields.NumberOrNull("air_flow_lpm") is double flow ? VolumeFlow.FromLitersPerMinute(flow) : null,
        Duration.FromSeconds(fields.Number("dwell_s")),
        Duration.FromSeconds(fields.Number("stop_s")),
        fields.Whole("passes"),
        fields.Text("summary"));

    private Exposure Exposure(RecordReader fields) => new(
        fields.Word<TouchPurpose>("purpose"),
        fields.Objects("tools", Tool),
        fields.Time("started_at"),
        Duration.FromSeconds(fields.Number("dwell_s")),
        fields.Objects("pads", Share),
        Added(fields),
        fields.TextOrNull("mix"),
        Celsius(fields, "board_at_start_c"),
        fields.TextOrNull("note"),
        fields.WordOrNull<BoardSide>("side"));

    private static AddedSolder? Added(RecordReader fields) =>
        fields.TextOrNull("added_alloy") is { } alloy ? new AddedSolder(alloy, Milligrams(fields, "added_mass_mg")) : null;

    private HeatedPad Share(RecordReader fields) => new(
        Pad(fields, "pad"),
        fields.Truth("touched"),
        fields.TruthOrNull("melted"),
        SeriesOrNull(fields));

    private static ToolSetting Tool(RecordReader fields)
    {
        string tool = fields.Text("tool");
        string? profile = fields.TextOrNull("profile");
        Temperature set = Temperature.FromDegreesCelsius(fields.Number("set_c"));
        return tool switch
        {
            "iron" => new ToolSetting.Iron(profile, set, fields.WordOrNull<ContactState>("contact")),
            "hot_air" => new ToolSetting.HotAir(
                profile,
                set,
                VolumeFlow.FromLitersPerMinute(fields.Number("flow_lpm")),
                fields.NumberOrNull("distance_mm") is double distance ? Length.FromMillimeters(distance) : null),
            "preheater" => new ToolSetting.Preheater(profile, set),
            "bath" => new ToolSetting.Bath(profile, set),
            _ => throw fields.Wrong("tool", "must be one of iron, hot_air, preheater, bath"),
        };
    }

    private TimedMeasurement Measurement(RecordReader fields)
    {
        PadId pad = Pad(fields, "pad");
        List<ToolSetting> tools = fields.Objects("tools", Tool);
        Temperature? board = Celsius(fields, "board_at_start_c");
        if (fields.NumberOrNull("time_to_flow_s") is double seconds)
        {
            return new TimedMeasurement.Flow(pad, tools, board, Duration.FromSeconds(seconds));
        }

        if (fields.NumberOrNull("flowed_within_s") is double within)
        {
            return new TimedMeasurement.FlowedWithin(pad, tools, board, Duration.FromSeconds(within));
        }

        if (fields.NumberOrNull("not_flowed_within_s") is double waited)
        {
            return new TimedMeasurement.NotFlowed(pad, tools, board, Duration.FromSeconds(waited));
        }

        string place = fields.Text("place");
        return SeriesOrNull(fields) is { } series
            ? new TimedMeasurement.Trace(pad, tools, board, place, series)
            : new TimedMeasurement.Reading(
                pad,
                tools,
                board,
                place,
                Duration.FromSeconds(fields.Number("after_s")),
                Temperature.FromDegreesCelsius(fields.Number("shown_c")));
    }

    private static ElectricalCheck Check(RecordReader fields)
    {
        PadId pin = Pad(fields, "pin");
        return fields.Text("check") switch
        {
            "continuity" => new ElectricalCheck.Continuity(pin),
            "ground_isolation" => new ElectricalCheck.GroundIsolation(pin),
            "isolation" => new ElectricalCheck.Isolation(pin, Pad(fields, "other_pin")),
            _ => throw fields.Wrong("check", "must be one of continuity, ground_isolation, isolation"),
        };
    }

    private static MeterReading? Reading(RecordReader fields) =>
        fields.TruthOrNull("reading_over_range") switch
        {
            true => new MeterReading.OverRange(),
            false => throw fields.Wrong("reading_over_range", "must be true, or absent"),
            null => fields.NumberOrNull("reading_ohm") is double ohms ? new MeterReading.Shown(ElectricResistance.FromOhms(ohms)) : null,
        };

    private static JumperWire Wire(RecordReader fields) => new(
        Pad(fields, "from"),
        Pad(fields, "to"),
        new WireGauge(fields.Whole("gauge_awg")),
        Length.FromMillimeters(fields.Number("length_mm")),
        fields.TextOrNull("insulation"),
        fields.TextOrNull("pair"));

    private InterfaceSeries? SeriesOrNull(RecordReader fields)
    {
        if (aside is not null)
        {
            return fields.WholeOrNull("series") is not int index ? null
                : index >= 0 && index < aside.Count ? aside[index]
                : throw fields.Wrong("series", "points at a series that is not there");
        }

        if (fields.ObjectOrNull("series") is not { } inline)
        {
            return null;
        }

        SeriesOrigin origin = inline.Word<SeriesOrigin>("origin");
        double error = origin == SeriesOrigin.Simulated ? inline.Number("max_error_k") : 0;
        InterfaceSeries series = InterfaceSeries.Restore(
            origin,
            new TemperatureHistory(inline.Numbers("time_s"), inline.Numbers("temperature_c")),
            TemperatureDelta.FromKelvins(error));
        inline.Finish();
        return series;
    }

    private static PadId Pad(RecordReader fields, string name)
    {
        string text = fields.Text(name);
        return PadId.Fault(text) is { } fault ? throw fields.Wrong(name, "is not usable: " + fault) : new PadId(text);
    }

    private static List<PadId> Pads(RecordReader fields) => [.. fields.Texts("pads").Select(p => new PadId(p))];

    private static Temperature? Celsius(RecordReader fields, string name) =>
        fields.NumberOrNull(name) is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    private static Mass? Milligrams(RecordReader fields, string name) =>
        fields.NumberOrNull(name) is double milligrams ? Mass.FromMilligrams(milligrams) : null;
}
