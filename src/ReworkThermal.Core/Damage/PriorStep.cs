using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>One steady step of assumed earlier heat.</summary>
/// <param name="Temperature">Interface temperature [°C].</param>
/// <param name="Time">How long [s], not negative.</param>
/// <param name="Melts">Whether the joint melted.</param>
/// <param name="Region">How much of the board was hot.</param>
public sealed record PriorStep(Temperature Temperature, Duration Time, bool Melts, HeatedRegion Region);
