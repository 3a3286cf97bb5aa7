using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>One add-melt-remove cycle.</summary>
/// <param name="Added">Solder that is melted into the joint before removal; its amount may be zero.</param>
/// <param name="Removed">Share of the mix that is taken away.</param>
public sealed record CleaningPass(SolderCharge Added, Ratio Removed);
