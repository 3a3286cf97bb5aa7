namespace ReworkThermal.Core.HeatFlow;

/// <summary>A neighbour, or the body of the part that the joint belongs to, against its limits.</summary>
/// <param name="Name">Its name.</param>
/// <param name="PeakCelsius">Highest temperature at its near edge [°C].</param>
/// <param name="PeakDifferenceK">Largest difference over its extent [K]; zero for a body.</param>
/// <param name="PeakRateKPerS">Fastest heating of its near edge [K/s]; zero for a body.</param>
/// <param name="LimitCelsius">Highest temperature it may have [°C]; null when none is known.</param>
/// <param name="Warnings">Limits that were passed or come near within their doubtful range, one sentence each; empty when it is safe.</param>
public sealed record NeighbourReport(string Name, double PeakCelsius, double PeakDifferenceK, double PeakRateKPerS, double? LimitCelsius, IReadOnlyList<string> Warnings);
