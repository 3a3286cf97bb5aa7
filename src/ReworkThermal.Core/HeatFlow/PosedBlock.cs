using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>A ring of one material.</summary>
/// <param name="Inner">Inner radius.</param>
/// <param name="Outer">Outer radius.</param>
/// <param name="Bottom">Lower end.</param>
/// <param name="Top">Upper end.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Start">Temperature at the start.</param>
public sealed record PosedBlock(Length Inner, Length Outer, Length Bottom, Length Top, PosedMaterial Material, Temperature Start);
