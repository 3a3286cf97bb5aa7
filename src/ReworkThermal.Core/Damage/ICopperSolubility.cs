namespace ReworkThermal.Core.Damage;

/// <summary>How much copper a given solder holds when it is saturated. Monotone in temperature.</summary>
public interface ICopperSolubility
{
    /// <summary>Copper in the saturated liquid [kg/kg].</summary>
    /// <param name="celsius">Temperature [°C].</param>
    /// <returns>A mass fraction between 0 and 1.</returns>
    public double SaturationMassFraction(double celsius);
}
