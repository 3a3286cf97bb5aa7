namespace ReworkThermal.Core.Evidence;

/// <summary>Constants of nature that several rooms use. Properties of materials are no constants: they stand in data files.</summary>
internal static class PhysicalConstants
{
    /// <summary>Stefan-Boltzmann constant [W/(m2 K4)], CODATA 2018 (exact since the 2019 revision of the SI).</summary>
    internal const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>Molar gas constant [J/(mol K)], CODATA 2018 (exact since the 2019 revision of the SI).</summary>
    internal const double MolarGas = 8.31446261815324;
}
