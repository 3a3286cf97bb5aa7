using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Leads a key to whoever it is for: a running touch, what lies over the place, a text field, the program, the place.</summary>
internal static class KeyUpdate
{
    internal static Step Apply(BenchState state, Press press)
    {
        if (state.Clock.Stage is TouchStage.Running && press.IsStroke)
        {
            return ClockUpdate.Stroke(state with { Overlay = Overlay.None });
        }

        if (state.Overlay != Overlay.None)
        {
            return Over(state, press);
        }

        if (press.Kind == PressKind.Leave)
        {
            return new Step(state with { Overlay = Overlay.Leave });
        }

        if (press.Kind == PressKind.Elsewhere)
        {
            return Elsewhere(state);
        }

        if (press.Kind == PressKind.PlaceDigit)
        {
            return GoTo(state with { Entry = (state.Entry?.For as EntryFor.StorePath)?.Waits }, press);
        }

        if (state.DraftOnOffer is { } draft)
        {
            return DraftUpdate.Answer(state with { Notice = Notice.None }, draft, press);
        }

        return state.Entry is not null ? EntryUpdate.Apply(state, press) : OwnKey(state with { Notice = Notice.None }, press);
    }

    private static Step Elsewhere(BenchState state) => state switch
    {
        { StoreTrouble: null } or { Entry: { Waiting: true } or { For: EntryFor.StorePath } } => new Step(state),
        _ => new Step(state with { Entry = TextEntry.Of(new EntryFor.StorePath(state.Entry), ScreenWords.ElsewhereLabel) with { Hint = ScreenWords.ElsewhereHint } }),
    };

    private static Step OwnKey(BenchState state, Press press) => press.Letter switch
    {
        >= '1' and <= '5' => GoTo(state, press),
        '?' => new Step(state with { Overlay = Overlay.Help }),
        '!' => new Step(state with { Overlay = Overlay.Cautions }),
        'q' => new Step(state with { Overlay = Overlay.Leave }),
        _ => InPlace(state, press),
    };

    private static Step InPlace(BenchState state, Press press) => state.Place switch
    {
        Place.Job when state.Job is null || state.Jobs.Shown => JobListUpdate.Apply(state, press),
        Place.Job => JobUpdate.Apply(state, press),
        Place.Mix => MixUpdate.Apply(state, press),
        Place.Plan => PlanUpdate.Apply(state, press),
        Place.Clock => ClockUpdate.Apply(state, press),
        Place.Record => RecordUpdate.Apply(state, press),
        _ => new Step(state),
    };

    private static Step GoTo(BenchState state, Press press)
    {
        Place place = (Place)(press.Character.Value - '0');
        BenchState there = state with { Place = place, Notice = Notice.None };
        Step step = new(place == Place.Plan ? PlanUpdate.Opened(there) : there);
        return place == Place.Mix && state.Mix.Answer is null && state.Mix.Turn == 0 ? MixUpdate.Ask(step.State, step.State.Mix.Question) : step;
    }

    private static Step Over(BenchState state, Press press)
    {
        BenchState below = state with { Overlay = Overlay.None };
        switch (state.Overlay)
        {
            case Overlay.Leave:
                return press.Letter == 'y' ? new Step(below).Do(new Errand.Leave()) : new Step(below).Say(ScreenWords.Stays);
            case Overlay.ReplaceRecord:
                return RecordUpdate.Replace(below, press);
            case Overlay.Cautions when state.Job is { CautionsShown: false, Status: JobStatus.Open }:
                return press.IsStroke ? new Step(below).Record(new JobEvent.CautionsShown()) : new Step(state);
            default:
                return new Step(below);
        }
    }
}
