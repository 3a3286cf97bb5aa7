using System.Collections.Immutable;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Reports.Plans;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The plan: request, run, answer, acceptance.</summary>
internal static class PlanUpdate
{
    private static readonly PlanField[] _fields = Enum.GetValues<PlanField>();

    internal static Step Apply(BenchState state, Press press)
    {
        PlanState plan = state.Plan;
        if (plan.Running is not null)
        {
            return press.Kind == PressKind.Escape
                ? new Step(state).Do(new Errand.CancelPlan()).Say(ScreenPlanWords.BreakingOff)
                : new Step(state).Say(ScreenPlanWords.RunGoesOn);
        }

        if (plan.Sampling is not null && press.Kind == PressKind.Escape)
        {
            return new Step(state).Do(new Errand.CancelPlan()).Say(ScreenPlanWords.BreakingOff);
        }

        return press.Letter == 'r' ? Run(state)
            : plan is { ShowsAnswer: true, Report: { } report } ? Answer(state, press, report)
            : Request(state, press);
    }

    /// <summary>The plan is opened: it is for the pad that was chosen last.</summary>
    internal static BenchState Opened(BenchState state) => state with
    {
        Plan = state.Plan with { Form = state.Plan.Form.With(PlanField.Pad, state is { Job: not null, Pad: { } pad } ? pad.Value : ScreenPlanWords.NoneAtHand) },
    };

    internal static Step Moved(BenchState state, Message.PlanMoved moved) => new(
        moved.Turn != state.Plan.Turn ? state
        : state.Plan.Running is not null ? state with { Plan = state.Plan with { Running = moved.Progress } }
        : state.Plan.Sampling is not null ? state with { Plan = state.Plan with { Sampling = moved.Progress } }
        : state);

    /// <summary>The plans are there to be read and kept while their spread is still being worked out.</summary>
    internal static Step Ranked(BenchState state, Message.PlanRanked ranked) => new(ranked.Turn != state.Plan.Turn
        ? state
        : state with
        {
            Plan = state.Plan with
            {
                Running = null,
                Sampling = new PlanProgress(0, ScreenPlanWords.Sampling),
                Report = ranked.Answer.Report,
                LearnedFrom = ranked.Answer.LearnedFrom,
                ShowsAnswer = true,
                Chosen = 0,
                Scroll = 0,
            },
        });

    internal static Step Ended(BenchState state, Message.PlanEnded ended)
    {
        if (ended.Turn != state.Plan.Turn)
        {
            return new Step(state);
        }

        bool wasSampling = state.Plan.Sampling is not null;
        PlanState still = state.Plan with { Running = null, Sampling = null };
        return ended.Answer switch
        {
            PlanAnswer.Answered answered when wasSampling => new Step(state with { Plan = still with { Report = answered.Report } }),
            PlanAnswer.Answered answered => new Step(state with { Plan = still with { Report = answered.Report, LearnedFrom = answered.LearnedFrom, ShowsAnswer = true, Chosen = 0, Scroll = 0 } }),
            PlanAnswer.Refused refused => new Step(state with
            {
                Plan = still with { Row = Array.IndexOf(_fields, refused.Field), Complaints = still.Complaints.SetItem(refused.Field, refused.Reason) },
            }).Complain(ScreenPlanWords.RequestWrong),
            PlanAnswer.NotAvailable none => new Step(state with { Plan = still }).Complain(none.Reason),
            _ => new Step(state with { Plan = still }).Say(wasSampling ? ScreenPlanWords.SamplingBrokenOff : ScreenPlanWords.BrokenOff),
        };
    }

    internal static Step Typed(BenchState state, TextEntry entry, PlanField field)
    {
        string text = entry.Text.Trim();
        if (PlanFormRules.Fault(field, text, state.Shelf, state.Job) is { } fault)
        {
            return EntryCommit.Wrong(state, entry, fault);
        }

        BenchState next = state with
        {
            Plan = state.Plan with { Form = state.Plan.Form.With(field, text), Complaints = state.Plan.Complaints.Remove(field) },
        };
        BriefField? briefField = field switch
        {
            PlanField.Board => BriefField.Board,
            PlanField.Joint => BriefField.Joint,
            PlanField.BaseSolder => BriefField.BaseSolder,
            PlanField.LeadFreeOnly => BriefField.LeadFreeOnly,
            _ => null,
        };
        return briefField is { } known && state.Job is { Status: JobStatus.Open } job && BriefText.With(job.Brief, known, text) != job.Brief
            ? new Step(next with { Entry = entry with { Waiting = true } }).Record(new JobEvent.BriefRevised(BriefText.With(job.Brief, known, text)), RecordedFor.Entry)
            : new Step(next with { Entry = null });
    }

    private static Step Run(BenchState state)
    {
        ImmutableDictionary<PlanField, string> complaints = _fields
            .Select(f => (Field: f, Fault: PlanFormRules.Fault(f, state.Plan.Form[f], state.Shelf, state.Job)))
            .Where(f => f.Fault is not null)
            .ToImmutableDictionary(f => f.Field, f => f.Fault!);
        if (!complaints.IsEmpty)
        {
            return new Step(state with
            {
                Plan = state.Plan with { Complaints = complaints, ShowsAnswer = false, Row = _fields.TakeWhile(f => !complaints.ContainsKey(f)).Count() },
            }).Complain(ScreenPlanWords.RequestWrong);
        }

        int turn = state.Plan.Turn + 1;
        Step step = new(state with
        {
            Plan = state.Plan with { Complaints = complaints, Turn = turn, Running = new PlanProgress(0, ScreenPlanWords.Starting), Sampling = null, ShowsAnswer = false },
        });
        return (state.Plan.Sampling is null ? step : step.Do(new Errand.CancelPlan())).Do(new Errand.RunPlan(turn, state.Plan.Form, state.Job));
    }

    private static Step Request(BenchState state, Press press)
    {
        PlanState plan = state.Plan;
        PlanField field = _fields[plan.Row];
        switch (press)
        {
            case { Kind: PressKind.Enter }:
                return EntryOpening.Open(state, new EntryFor.Plan(field));
            case { Kind: PressKind.Left or PressKind.Right } when PlanFormRules.Options(field, state.Shelf, state.Job).Count > 0:
                return Typed(state, EntryOpening.Of(state, new EntryFor.Plan(field)).Stepped(press.Kind == PressKind.Right ? 1 : -1), field);
            case { Letter: 'v' } when plan.Report is not null:
                return new Step(state with { Plan = plan with { ShowsAnswer = true } });
            default:
                return Rows.After(plan.Row, _fields.Length, press) is int row
                    ? new Step(state with { Plan = plan with { Row = row } })
                    : new Step(state);
        }
    }

    private static Step Answer(BenchState state, Press press, PlanReport report)
    {
        PlanState plan = state.Plan;
        switch (press)
        {
            case { Kind: PressKind.Escape } or { Letter: 'v' }:
                return new Step(state with { Plan = plan with { ShowsAnswer = false } });
            case { Kind: PressKind.PageDown }:
                return new Step(state with { Plan = plan with { Scroll = plan.Scroll + 5 } });
            case { Kind: PressKind.PageUp }:
                return new Step(state with { Plan = plan with { Scroll = Math.Max(0, plan.Scroll - 5) } });
            case { Letter: 'k' } when report.Plans.Count > 0:
                return Accept(state, report.Plans[plan.Chosen]);
            default:
                return Rows.After(plan.Chosen, report.Plans.Count, press) is int row
                    ? new Step(state with { Plan = plan with { Chosen = row, Scroll = 0 } })
                    : new Step(state);
        }
    }

    private static Step Accept(BenchState state, PlanLine line)
    {
        if (state.Job is null)
        {
            return new Step(state).Complain(ScreenWords.OpenJobFirst);
        }

        AcceptedPlan plan = new(
            line.Alloy,
            line.Alloy is null ? null : line.AddedMass,
            line.First.IronSetting,
            line.First.Preheater is null ? null : line.First.Board,
            line.First.Air?.Setting,
            line.First.Air?.Flow,
            line.First.Dwell,
            line.First.Stop,
            line.Passes,
            ScreenPlanWords.Summary(line));
        BenchState next = state with
        {
            Clock = state.Clock with
            {
                IronName = Id(state, line.First.Iron) ?? state.Clock.IronName,
                NozzleName = Id(state, line.First.Air?.Nozzle) ?? state.Clock.NozzleName,
                PreheaterName = Id(state, line.First.Preheater) ?? state.Clock.PreheaterName,
            },
        };
        return new Step(next).Record(new JobEvent.PlanAccepted(plan));
    }

    private static string? Id(BenchState state, string? tool) => tool is null ? null : state.Shelf?.ToolIds.GetValueOrDefault(tool);
}
