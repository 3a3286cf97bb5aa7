using System.Globalization;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>A heat budget as figures.</summary>
internal static class BudgetText
{
    internal static string Of(PadBudget budget) => budget switch
    {
        PadBudget.Known known => string.Create(
            CultureInfo.InvariantCulture,
            $"{Least(known)}{known.Central * 100:0} % ({known.Low * 100:0} to {known.High * 100:0})"),
        _ => ScreenWords.BudgetUnknown,
    };

    internal static string Short(PadBudget.Known known) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Least(known)}{known.Central * 100:0}% ({known.Low * 100:0}-{known.High * 100:0})");

    private static string Least(PadBudget.Known known) => known.TouchesLeftOut > 0 ? ">" : string.Empty;
}
