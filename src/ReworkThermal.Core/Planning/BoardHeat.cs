using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>A preheater, set so that the board settles at a temperature.</summary>
/// <param name="Preheater">The preheater.</param>
/// <param name="Board">Temperature of the settled board's upper face, away from joint and rim.</param>
public sealed record BoardHeat(Preheater Preheater, Temperature Board);
