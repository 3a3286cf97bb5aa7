using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>Which keys the place takes now.</summary>
internal static class KeyHints
{
    internal static string Of(BenchState state) => state.Place switch
    {
        Place.Job when state.Job is null || state.Jobs.Shown => ScreenJobWords.JobsKeys,
        Place.Job => state.JobPlace.Row < Enum.GetValues<BriefField>().Length ? ScreenJobWords.FieldKeys : ScreenJobWords.PinKeys,
        Place.Mix => ScreenMixWords.Keys,
        Place.Plan when state.Plan.Running is not null => ScreenPlanWords.RunningKeys,
        Place.Plan when state.Plan is { ShowsAnswer: true, Report: not null, Sampling: not null } => ScreenPlanWords.SamplingKeys,
        Place.Plan when state.Plan is { ShowsAnswer: true, Report.Plans.Count: 0 } => ScreenPlanWords.NoPlanKeys,
        Place.Plan when state.Plan is { ShowsAnswer: true, Report: not null } => ScreenPlanWords.AnswerKeys,
        Place.Plan => state.Plan.Report is null ? ScreenPlanWords.RequestKeys : ScreenPlanWords.RequestKeysWithAnswer,
        Place.Clock when state.Clock.Stage is TouchStage.Running => ScreenClockWords.RunningKeys,
        Place.Clock => state.Job?.OpenTouches.Count > 0 ? ScreenClockWords.OpenKeys : ScreenClockWords.Keys,
        Place.Record => state.Record.ShowsChecks ? ScreenRecordWords.CheckKeys : ScreenRecordWords.EntryKeys,
        _ => string.Empty,
    };
}
