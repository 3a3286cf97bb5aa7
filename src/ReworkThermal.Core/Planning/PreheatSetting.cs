using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>A preheater at a setting.</summary>
/// <param name="Preheater">The preheater.</param>
/// <param name="Set">Temperature of plate, air or emitter face.</param>
public sealed record PreheatSetting(Preheater Preheater, Temperature Set);
