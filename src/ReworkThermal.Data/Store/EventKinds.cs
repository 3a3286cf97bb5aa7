using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>Words for the kinds of events. They are part of the file format: add, never change.</summary>
internal static class EventKinds
{
    internal const string JobOpened = "job_opened";
    internal const string BriefRevised = "brief_revised";
    internal const string PinsRegistered = "pins_registered";
    internal const string PadRegistered = "pad_registered";
    internal const string PadStateSeen = "pad_state_seen";
    internal const string PriorHeatStated = "prior_heat_stated";
    internal const string PlanAccepted = "plan_accepted";
    internal const string CautionsShown = "cautions_shown";
    internal const string TouchStarted = "touch_started";
    internal const string ExposureLogged = "exposure_logged";
    internal const string TouchDropped = "touch_dropped";
    internal const string MeasurementTaken = "measurement_taken";
    internal const string CheckDone = "check_done";
    internal const string WireRun = "wire_run";
    internal const string NoteTaken = "note_taken";
    internal const string EntryVoided = "entry_voided";
    internal const string JobClosed = "job_closed";
    internal const string JobReopened = "job_reopened";

    internal static string Of(JobEvent what) => what switch
    {
        JobEvent.JobOpened => JobOpened,
        JobEvent.BriefRevised => BriefRevised,
        JobEvent.PinsRegistered => PinsRegistered,
        JobEvent.PadRegistered => PadRegistered,
        JobEvent.PadStateSeen => PadStateSeen,
        JobEvent.PriorHeatStated => PriorHeatStated,
        JobEvent.PlanAccepted => PlanAccepted,
        JobEvent.CautionsShown => CautionsShown,
        JobEvent.TouchStarted => TouchStarted,
        JobEvent.ExposureLogged => ExposureLogged,
        JobEvent.TouchDropped => TouchDropped,
        JobEvent.MeasurementTaken => MeasurementTaken,
        JobEvent.CheckDone => CheckDone,
        JobEvent.WireRun => WireRun,
        JobEvent.NoteTaken => NoteTaken,
        JobEvent.EntryVoided => EntryVoided,
        JobEvent.JobClosed => JobClosed,
        JobEvent.JobReopened => JobReopened,
        _ => throw new InvalidOperationException($"no word for {what.GetType().Name}"),
    };
}
