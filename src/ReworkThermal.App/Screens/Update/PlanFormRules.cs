using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Tools;

namespace ReworkThermal.App.Screens.Update;

/// <summary>What the fields of a plan request may hold.</summary>
internal static class PlanFormRules
{
    private static readonly string[] _yesNo = [ScreenWords.No, ScreenWords.Yes];

    /// <summary>Texts to choose from.</summary>
    internal static IReadOnlyList<string> Options(PlanField field, ShelfNames? shelf, JobState? job) => field switch
    {
        PlanField.Board => shelf?.Boards ?? [],
        PlanField.Joint => shelf?.Joints ?? [],
        PlanField.Side => [string.Empty, .. Vocabulary.Of<BoardSide>().Keys],
        PlanField.BaseSolder or PlanField.Refill => shelf?.Solders ?? [],
        PlanField.EarlierHeat => [.. (shelf?.EarlierHeats ?? []).Select(ScreenPlanWords.EarlierHeat)],
        PlanField.Pad => [ScreenPlanWords.NoneAtHand, .. (job?.Pads.Keys ?? []).Select(p => p.Value)],
        PlanField.Irons => OneOrAll(shelf?.Irons ?? []),
        PlanField.Contact => [string.Empty, .. Vocabulary.Of<ContactState>().Keys],
        PlanField.Nozzles => [ScreenPlanWords.NoneAtHand, .. OneOrAll(shelf?.Nozzles ?? [])],
        PlanField.Preheaters => [ScreenPlanWords.NoneAtHand, .. OneOrAll(shelf?.Preheaters ?? [])],
        PlanField.Removal => shelf?.Removals ?? [],
        PlanField.Room => shelf?.Rooms ?? [],
        PlanField.LeadFreeOnly => _yesNo,
        _ => [],
    };

    /// <summary>Whether an empty line stands for what is usual.</summary>
    internal static bool IsUsualWhenEmpty(PlanField field) =>
        field is PlanField.Side or PlanField.Contact or PlanField.AirMillimetres or PlanField.MostDwellSeconds or PlanField.MostBudgetPercent;

    /// <summary>What is wrong with a text, or null.</summary>
    internal static string? Fault(PlanField field, string text, ShelfNames? shelf, JobState? job) => field switch
    {
        _ when text.Length == 0 && IsUsualWhenEmpty(field) => null,
        PlanField.AirLitres => Typed.Number(text, 1, 200, "L/min", out _),
        PlanField.AirMillimetres => Typed.Number(text, 2, 150, "mm", out _),
        PlanField.WireMillimetres => Typed.Number(text, 0.2, 3, "mm", out _),
        PlanField.AmbientCelsius => Typed.Number(text, 0, 50, "°C", out _),
        PlanField.MostDwellSeconds => Typed.Number(text, 0.5, 60, "s", out _),
        PlanField.MostBudgetPercent => Typed.Number(text, 0.01, 100, "%", out _),
        _ when text.Length == 0 => ScreenPlanWords.FieldNeeded,
        PlanField.BaseSolder or PlanField.Refill => BriefText.Solder(text, Options(field, shelf, job)),
        PlanField.Irons => NamesFault(text, shelf?.Irons),
        PlanField.Nozzles => text == ScreenPlanWords.NoneAtHand ? null : NamesFault(text, shelf?.Nozzles),
        PlanField.Preheaters => text == ScreenPlanWords.NoneAtHand ? null : NamesFault(text, shelf?.Preheaters),
        _ => BriefText.Named(text, Options(field, shelf, job)),
    };

    /// <summary>The names in a list separated by commas.</summary>
    internal static IReadOnlyList<string> Names(string text) =>
        text == ScreenPlanWords.NoneAtHand ? [] : text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static string? NamesFault(string text, IReadOnlyList<string>? known) =>
        Names(text).Select(n => BriefText.Named(n, known ?? [])).FirstOrDefault(f => f is not null);

    private static IReadOnlyList<string> OneOrAll(IReadOnlyList<string> names) => names.Count > 1 ? [.. names, string.Join(", ", names)] : names;
}
