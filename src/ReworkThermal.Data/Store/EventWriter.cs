using System.Text.Json;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;

namespace ReworkThermal.Data.Store;

/// <summary>
/// Writes events as JSON fields, always in the same order and spelling, plain numbers with the unit in the field's name, absent
/// fields left out. Temperature series go inline, or, in the store, into a list beside the JSON with their index in their place.
/// </summary>
internal sealed partial class EventWriter
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
                Optional("joint", registered.Joint);
                break;
            case JobEvent.PadStateSeen seen:
                _json.WriteString("pad", seen.Pad.Value);
                _json.WriteString("state", seen.State.Word());
                Optional("note", seen.Note);
                break;
            case JobEvent.PriorHeatStated stated:
                Pads(stated.Pads);
                _json.WriteString("prior_heat", stated.Heat.Word());
                Optional("note", stated.Note);
                break;
            case JobEvent.PlanAccepted accepted:
                Plan(accepted.Plan);
                break;
            case JobEvent.TouchStarted started:
                _json.WriteString("purpose", started.Start.Purpose.Word());
                List("tools", started.Start.Tools, Tool);
                Pads(started.Start.Pads);
                Added(started.Start.Added);
                Optional("side", started.Start.Side?.Word());
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
        _json.WriteString("purpose", exposure.Purpose.Word());
        List("tools", exposure.Tools, Tool);
        _json.WriteString("started_at", RecordTime.Write(exposure.StartedAt));
        _json.WriteNumber("dwell_s", exposure.Dwell.Seconds);
        List("pads", exposure.Pads, Share);
        Added(exposure.Added);
        Optional("mix", exposure.Mix);
        Optional("board_at_start_c", exposure.BoardAtStart?.DegreesCelsius);
        Optional("side", exposure.Side?.Word());
        Optional("note", exposure.Note);
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
            case TimedMeasurement.FlowedWithin by:
                _json.WriteNumber("flowed_within_s", by.Within.Seconds);
                break;
            case TimedMeasurement.NotFlowed not:
                _json.WriteNumber("not_flowed_within_s", not.Within.Seconds);
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

        _json.WriteString("result", done.Result.Word());
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
}
