using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Fills in what the data folders and the job say, where nothing was chosen yet.</summary>
internal static class ShelfUpdate
{
    /// <summary>The data folders were read.</summary>
    internal static Step Read(BenchState state, ShelfNames names)
    {
        BenchState next = FromJob(state with { Shelf = names });
        return next.Place == Place.Mix || next.Mix.Turn > 0 ? MixUpdate.Ask(next, next.Mix.Question) : new Step(next);
    }

    /// <summary>Takes the job's brief over into the mix and the plan request.</summary>
    internal static BenchState FromJob(BenchState state)
    {
        Core.Jobs.JobBrief? brief = state.Job?.Brief;
        ShelfNames? shelf = state.Shelf;
        MixQuestion mix = state.Mix.Question;
        mix = mix with
        {
            Joint = brief?.Joint ?? Or(mix.Joint, shelf?.Joints),
            Board = brief?.Board ?? Or(mix.Board, shelf?.Boards),
            BaseSolder = brief?.BaseSolder ?? mix.BaseSolder,
            Removal = Or(mix.Removal, shelf?.Removals),
        };
        PlanForm form = state.Plan.Form
            .With(PlanField.Board, mix.Board)
            .With(PlanField.Joint, mix.Joint)
            .With(PlanField.BaseSolder, mix.BaseSolder)
            .With(PlanField.LeadFreeOnly, brief is null ? state.Plan.Form[PlanField.LeadFreeOnly] : brief.LeadFreeOnly ? ScreenWords.Yes : ScreenWords.No)
            .With(PlanField.EarlierHeat, state.Pad is { } pad && state.Job?.Pads[pad].Prior is { } prior ? ScreenJobWords.Prior(prior).ToLowerInvariant() : state.Plan.Form[PlanField.EarlierHeat])
            .With(PlanField.Irons, Or(state.Plan.Form[PlanField.Irons], shelf is null ? null : [string.Join(", ", shelf.Irons)]))
            .With(PlanField.Preheaters, Or(state.Plan.Form[PlanField.Preheaters], shelf?.Preheaters))
            .With(PlanField.Room, Or(state.Plan.Form[PlanField.Room], shelf?.Rooms.Contains(UsualBench.Room) == true ? [UsualBench.Room] : shelf?.Rooms))
            .With(PlanField.Removal, mix.Removal);
        return state with { Mix = state.Mix with { Question = mix }, Plan = state.Plan with { Form = form } };
    }

    private static string Or(string chosen, IReadOnlyList<string>? names) => chosen.Length > 0 || names is null || names.Count == 0 ? chosen : names[0];
}
