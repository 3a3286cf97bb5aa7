namespace ReworkThermal.Core.Damage;

/// <summary>Copper taken from a pad and held by the solder on it.</summary>
/// <param name="LostM">Depth of copper dissolved so far [m].</param>
/// <param name="Held">Copper in the present charge [kg/kg]; null before any charge is known.</param>
internal readonly record struct CopperTrack(double LostM, double? Held);
