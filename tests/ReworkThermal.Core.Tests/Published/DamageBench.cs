using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Data;
using ReworkThermal.Data.Limits;
using UnitsNet;
using static ReworkThermal.Core.Tests.HeatFlowBench;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>The shipped figures, and pads and solders made for tests.</summary>
internal static class DamageBench
{
    internal static DamageLimits Limits { get; } = LimitsFolder.Load(DataRoot.BesideProgram);

    internal static DamageParameters Parameters => Limits.Parameters;

    /// <summary>No earlier heat at all.</summary>
    internal static PriorHeat Untouched { get; } = new(
        "untouched", "no earlier heat", [], [], [], new RatedEstimate<Length>(Exactly(Length.Zero), SupportLevel.Judgement), Invented, SupportLevel.Judgement);

    internal static LaminateLimits Laminate(string name) => Limits.LaminateOrNull(name) ?? throw new ArgumentException(name);

    internal static PriorHeat Prior(string name) => Limits.PriorOrNull(name) ?? throw new ArgumentException(name);

    internal static PadGeometry.Through Hole(double wallUm = 20, double widthMm = 2, double holeMm = 1) => new(
        Length.FromMillimeters(widthMm), Length.FromMillimeters(holeMm), Exactly(Length.FromMicrometers(wallUm)), Length.FromMillimeters(1.6));

    internal static PadGeometry.Surface Land(double widthMm = 2) =>
        new(Length.FromMillimeters(widthMm), Exactly(Length.FromMicrometers(35)));

    internal static DamageModel Model(string laminate, PadGeometry? pad = null) => new(Laminate(laminate), Parameters, pad ?? Hole());

    internal static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);

    internal static MoltenContact Charge(
        ICopperSolubility solubility, double copper, double density, double? volumeToAreaMm, SolderMotion motion = SolderMotion.Still, double moltenAboveC = 140) => new(
        solubility,
        Celsius(moltenAboveC),
        Density.FromKilogramsPerCubicMeter(density),
        volumeToAreaMm is { } mm ? Length.FromMillimeters(mm) : null,
        copper,
        motion);
}
