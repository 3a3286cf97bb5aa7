using System.Text.Json;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;

namespace ReworkThermal.Data.Store;

/// <summary>
/// Writes events as JSON fields, always in the same order and spelling, plain numbers with the unit in the field's name, absent
/// fields left out. Temperature series go inline, or, in the store, into a list beside the JSON with their index in their place.
/// </summary>
internal sealed class EventWriter
{
    private readonly Utf8JsonWriter _json;
    private readonly List<InterfaceSeries>? _aside;

    /// <summary>Creates a writer.</summary>
    /// <param name="json">An open object.</param>
    /// <param name="aside">Where series go; null to write them inline.</param>
    internal EventWriter(Utf8JsonWriter json, List<InterfaceSeries>? aside)
    {
        _json = json;
        _aside = aside;
    }

    /// <summary>Writes the fields of an event into the open object.</summary>
    internal void Write(JobEvent what)
    {
        switch (what)
        {
            case JobEvent.JobOpened opened:
                Brief(opened.Brief);
                break;
            case JobEvent.BriefRevised revised:
                Brief(revised.Brief);
                break;
            case JobEvent.PinsRegistered registered:
                List("pins", registered.Pins, Pin);
                break;
            case JobEvent.PadRegistered registered:
                _json.WriteString("pad", registered.Pad.Value);
                _json.WriteString("description", registered.Description);
                break;
            case JobEvent.PadStateSeen seen:
                _json.WriteString("pad", seen.Pad.Value);
                _json.WriteString("state", Words.PadStates[seen.State]);
                Optional("note", seen.Note);
                break;
            case JobEvent.PriorHeatStated stated:
                Pads(stated.Pads);
                _json.WriteString("prior_heat", Words.PriorHeats[stated.Heat]);
                Optional("note", stated.Note);
                break;
            case JobEvent.PlanAccepted accepted:
                Plan(accepted.Plan);
                break;
            case JobEvent.TouchStarted started:
                _json.WriteString("purpose", Words.Purposes[started.Start.Purpose]);
                List("tools", started.Start.Tools, Tool);
                Pads(started.Start.Pads);
                break;
            case JobEvent.ExposureLogged logged:
                Exposure(logged.Exposure, logged.Ends);
                break;
            case JobEvent.TouchDropped dropped:
                _json.WriteNumber("start", dropped.Start);
                _json.WriteString("reason", dropped.Reason);
                break;
            case JobEvent.MeasurementTaken taken:
                Measurement(taken.Measurement);
                break;
            case JobEvent.CheckDone done:
                Check(done);
                break;
            case JobEvent.WireRun run:
                Wire(run);
                break;
            case JobEvent.NoteTaken note:
                Optional("pad", note.Pad?.Value);
                _json.WriteString("text", note.Text);
                break;
            case JobEvent.EntryVoided voided:
                _json.WriteNumber("voids", voided.Number);
                _json.WriteString("reason", voided.Reason);
                break;
            case JobEvent.JobClosed closed:
                Optional("note", closed.Note);
                break;
            case JobEvent.JobReopened reopened:
                _json.WriteString("reason", reopened.Reason);
                break;
            case JobEvent.CautionsShown:
                break;
            default:
                throw new InvalidOperationException($"no form for {what.GetType().Name}");
        }
    }

    private void Brief(JobBrief brief)
    {
        _json.WriteString("label", brief.Label);
        Optional("board", brief.Board);
        Optional("joint", brief.Joint);
        Optional("connector", brief.Connector);
        Optional("base_solder", brief.BaseSolder);
        _json.WriteBoolean("lead_free_only", brief.LeadFreeOnly);
    }

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
                _json.WriteString("shield_bond", Words.Bonds[shield.Bond]);
                break;
            default:
                _json.WriteString("duty", "no_connect");
                break;
        }

        Optional("current_a", pin.Current?.Amperes);
        Optional("pair", pin.Pair);
    }

    private void Plan(AcceptedPlan plan)
    {
        Optional("alloy", plan.Alloy);
        Optional("added_mass_mg", plan.AddedMass?.Milligrams);
        Optional("iron_set_c", plan.IronSet?.DegreesCelsius);
        Optional("preheat_c", plan.PreheatSet?.DegreesCelsius);
        Optional("air_set_c", plan.AirSet?.DegreesCelsius);
        Optional("air_flow_lpm", plan.AirFlow?.LitersPerMinute);
        _json.WriteNumber("dwell_s", plan.Dwell.Seconds);
        _json.WriteNumber("stop_s", plan.Stop.Seconds);
        _json.WriteNumber("passes", plan.Passes);
        _json.WriteString("summary", plan.Summary);
    }

    private void Exposure(Exposure exposure, int? ends)
    {
        Optional("ends", ends);
        _json.WriteString("purpose", Words.Purposes[exposure.Purpose]);
        List("tools", exposure.Tools, Tool);
        _json.WriteString("started_at", RecordTime.Write(exposure.StartedAt));
        _json.WriteNumber("dwell_s", exposure.Dwell.Seconds);
        List("pads", exposure.Pads, Share);
        if (exposure.Added is { } added)
        {
            _json.WriteString("added_alloy", added.Designation);
            Optional("added_mass_mg", added.Mass?.Milligrams);
        }

        Optional("mix", exposure.Mix);
        Optional("board_at_start_c", exposure.BoardAtStart?.DegreesCelsius);
        Optional("note", exposure.Note);
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
        if (tool is ToolSetting.HotAir air)
        {
            _json.WriteNumber("flow_lpm", air.Flow.LitersPerMinute);
        }
    }

    private void Measurement(TimedMeasurement measurement)
    {
        _json.WriteString("pad", measurement.Pad.Value);
        List("tools", measurement.Tools, Tool);
        Optional("board_at_start_c", measurement.BoardAtStart?.DegreesCelsius);
        switch (measurement)
        {
            case TimedMeasurement.Flow flow:
                _json.WriteNumber("time_to_flow_s", flow.TimeToFlow.Seconds);
                break;
            case TimedMeasurement.Reading reading:
                _json.WriteString("place", reading.Place);
                _json.WriteNumber("after_s", reading.After.Seconds);
                _json.WriteNumber("shown_c", reading.Shown.DegreesCelsius);
                break;
            case TimedMeasurement.Trace trace:
                _json.WriteString("place", trace.Place);
                Series(trace.Series);
                break;
            default:
                throw new InvalidOperationException($"no form for {measurement.GetType().Name}");
        }
    }

    private void Check(JobEvent.CheckDone done)
    {
        switch (done.Check)
        {
            case ElectricalCheck.Continuity continuity:
                _json.WriteString("check", "continuity");
                _json.WriteString("pin", continuity.Pin.Value);
                break;
            case ElectricalCheck.GroundIsolation ground:
                _json.WriteString("check", "ground_isolation");
                _json.WriteString("pin", ground.Pin.Value);
                break;
            case ElectricalCheck.Isolation isolation:
                _json.WriteString("check", "isolation");
                _json.WriteString("pin", isolation.First.Value);
                _json.WriteString("other_pin", isolation.Second.Value);
                break;
            default:
                throw new InvalidOperationException($"no form for {done.Check.GetType().Name}");
        }

        _json.WriteString("result", Words.Results[done.Result]);
        switch (done.Reading)
        {
            case MeterReading.Shown shown:
                _json.WriteNumber("reading_ohm", shown.Resistance.Ohms);
                break;
            case MeterReading.OverRange:
                _json.WriteBoolean("reading_over_range", true);
                break;
            default:
                break;
        }

        Optional("note", done.Note);
    }

    private void Wire(JobEvent.WireRun run)
    {
        _json.WriteString("from", run.Wire.From.Value);
        _json.WriteString("to", run.Wire.To.Value);
        _json.WriteNumber("gauge_awg", run.Wire.Gauge.Number);
        _json.WriteNumber("length_mm", run.Wire.Length.Millimeters);
        Optional("insulation", run.Wire.Insulation);
        Optional("pair", run.Wire.Pair);
        Optional("note", run.Note);
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
        _json.WriteString("origin", Words.Origins[series.Origin]);
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
