using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>Which solder in which joint was asked about, as it stands on the command line.</summary>
/// <param name="Joint">Identifier of a joint profile.</param>
/// <param name="Board">Identifier of a board profile; null when not named.</param>
/// <param name="Solder">What is in the joint; null when not named.</param>
/// <param name="PickedUp">Metal taken up from barrel and finish.</param>
internal sealed record JointWish(string Joint, string? Board, string? Solder, (Mass Copper, Mass Silver, GoldPlating? Gold) PickedUp);
