using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>A point to watch.</summary>
/// <param name="Name">Name of the history.</param>
/// <param name="Radius">Radius.</param>
/// <param name="Height">Height.</param>
public sealed record PosedProbe(string Name, Length Radius, Length Height);
