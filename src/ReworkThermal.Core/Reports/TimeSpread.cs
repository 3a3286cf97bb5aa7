using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>A time that differs from run to run.</summary>
/// <param name="P10">One run in ten is quicker.</param>
/// <param name="P50">Half of the runs are quicker.</param>
/// <param name="P90">Nine runs in ten are quicker.</param>
public sealed record TimeSpread(Duration P10, Duration P50, Duration P90);
