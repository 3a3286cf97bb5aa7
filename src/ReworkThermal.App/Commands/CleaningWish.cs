using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>What the command <c>clean</c> was asked.</summary>
/// <param name="Joint">Joint profile.</param>
/// <param name="Board">Board profile; null for the only one that fits.</param>
/// <param name="Solder">Solder in the joint; null for the usual one.</param>
/// <param name="With">Dilution alloy.</param>
/// <param name="Ratio">Share of the first mix that is added alloy; null for half.</param>
/// <param name="Passes">Number of passes.</param>
/// <param name="Refill">Alloy of the refit.</param>
/// <param name="Flush">Alloy that later passes add; null for the refill alloy.</param>
/// <param name="Removal">Way of removal; null for the usual one.</param>
/// <param name="PickedUp">Metal taken up from barrel and finish.</param>
internal sealed record CleaningWish(
    string Joint,
    string? Board,
    string? Solder,
    string With,
    double? Ratio,
    int Passes,
    string Refill,
    string? Flush,
    string? Removal,
    (Mass Copper, Mass Silver) PickedUp);
