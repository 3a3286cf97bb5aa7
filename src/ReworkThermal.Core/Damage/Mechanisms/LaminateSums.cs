namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>
/// Linear damage sums of a laminate, sum of dt / t(T) with the class's central T260: one per activation energy, and two for an
/// interface that is hotter or cooler than the history says. Dimensionless; 1 is delamination. Each is additive over exposures and
/// never falls.
/// </summary>
/// <param name="LowEnergy">With the lowest activation energy.</param>
/// <param name="CentralEnergy">With the central activation energy.</param>
/// <param name="HighEnergy">With the highest activation energy.</param>
/// <param name="Cooler">Central energy, every temperature lower by the stated interface error.</param>
/// <param name="Hotter">Central energy, every temperature higher by the stated interface error.</param>
public readonly record struct LaminateSums(double LowEnergy, double CentralEnergy, double HighEnergy, double Cooler, double Hotter)
{
    /// <summary>Sums after both exposures.</summary>
    /// <param name="left">First.</param>
    /// <param name="right">Second.</param>
    /// <returns>The total.</returns>
    public static LaminateSums operator +(LaminateSums left, LaminateSums right) => left.Add(right);

    /// <summary>Sums after another exposure.</summary>
    /// <param name="other">What the other exposure costs.</param>
    /// <returns>The total.</returns>
    public LaminateSums Add(LaminateSums other) => new(
        LowEnergy + other.LowEnergy,
        CentralEnergy + other.CentralEnergy,
        HighEnergy + other.HighEnergy,
        Cooler + other.Cooler,
        Hotter + other.Hotter);
}
