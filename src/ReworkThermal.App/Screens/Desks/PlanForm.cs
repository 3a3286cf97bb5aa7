using System.Collections.Immutable;
using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>A plan request as typed, one text per field.</summary>
internal sealed record PlanForm(ImmutableDictionary<PlanField, string> Texts)
{
    /// <summary>Where a session begins.</summary>
    internal static readonly PlanForm Usual = new(new Dictionary<PlanField, string>
    {
        [PlanField.BaseSolder] = UsualBench.Solder,
        [PlanField.Refill] = UsualBench.Solder,
        [PlanField.EarlierHeat] = "reworked",
        [PlanField.Pad] = ScreenPlanWords.NoneAtHand,
        [PlanField.Nozzles] = ScreenPlanWords.NoneAtHand,
        [PlanField.AirLitres] = "20",
        [PlanField.WireMillimetres] = "0.8",
        [PlanField.AmbientCelsius] = "23",
        [PlanField.LeadFreeOnly] = ScreenWords.No,
    }.ToImmutableDictionary());

    internal string this[PlanField field] => Texts.GetValueOrDefault(field, string.Empty);

    internal PlanForm With(PlanField field, string text) => new(Texts.SetItem(field, text));
}
