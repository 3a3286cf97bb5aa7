namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Natural convection from a thin horizontal cylinder to still air at 101.325 kPa.</summary>
internal static class StillAir
{
    private const double PressurePa = 101_325;
    private const double GasConstantJPerKgK = 287.05;
    private const double GravityMPerS2 = 9.80665;
    private const double HeatCapacityJPerKgK = 1007;

    /// <summary>Conductivity [W/mK] by Sutherland's law (constants of F.M. White, Viscous Fluid Flow, from memory; 200-2000 K).</summary>
    internal static double Conductivity(double temperatureK) => 0.0241 * Sutherland(temperatureK, 194);

    /// <summary>Kinematic viscosity [m²/s]; dynamic viscosity by Sutherland's law (same source), ideal gas.</summary>
    internal static double KinematicViscosity(double temperatureK) => 1.716e-5 * Sutherland(temperatureK, 110.4) / Density(temperatureK);

    /// <summary>
    /// Heat-transfer coefficient [W/m²K]: Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))² at the mean of wire and air
    /// temperature (S.W. Churchill and H.H.S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049; Ra 1e-5 to 1e12).
    /// </summary>
    internal static double Coefficient(double diameterM, double wireK, double airK)
    {
        double filmK = (wireK + airK) / 2;
        double conductivity = Conductivity(filmK);
        double viscosity = KinematicViscosity(filmK);
        double diffusivity = conductivity / (Density(filmK) * HeatCapacityJPerKgK);
        double rayleigh = GravityMPerS2 * Math.Abs(wireK - airK) * diameterM * diameterM * diameterM / (filmK * viscosity * diffusivity);
        double prandtl = viscosity / diffusivity;
        double root = 0.60 + (0.387 * Math.Pow(rayleigh, 1 / 6.0) / Math.Pow(1 + Math.Pow(0.559 / prandtl, 9 / 16.0), 8 / 27.0));
        return root * root * conductivity / diameterM;
    }

    private static double Sutherland(double temperatureK, double constantK) =>
        Math.Pow(temperatureK / 273, 1.5) * (273 + constantK) / (temperatureK + constantK);

    private static double Density(double temperatureK) => PressurePa / (GasConstantJPerKgK * temperatureK);
}
