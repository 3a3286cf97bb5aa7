namespace ReworkThermal.Core.Damage;

/// <summary>The molar gas constant.</summary>
internal static class MolarGas
{
    /// <summary>R [J/(mol K)], exact since the 2019 revision of the SI (CODATA 2018).</summary>
    internal const double Constant = 8.31446261815324;
}
