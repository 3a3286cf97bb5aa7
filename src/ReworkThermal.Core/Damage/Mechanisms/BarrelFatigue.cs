using ReworkThermal.Core.Damage.Exposures;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>
/// Cycles to failure of a plated barrel that is stretched by the board's through-thickness expansion. Relation usually credited to
/// Engelmaier and IPC-TR-579, from memory: Nf^-0.6 Df^0.75 + 0.9 (Su/E) (exp(Df)/0.36)^(0.1785 log10(1e5/Nf)) = strain range,
/// with the strain from the free mismatch shared between board and a copper that yields. Its error is a factor of two.
/// </summary>
public sealed class BarrelFatigue
{
    // Bracket of the logarithm of the life: strains of a heated board lie well inside it.
    private const double MostLogLife = 12;

    private readonly BarrelParameters _parameters;
    private readonly LaminateLimits _laminate;
    private readonly PadGeometry.Through _pad;
    private readonly double _plasticAtOneCycle;
    private readonly double _elasticFactor;
    private readonly double _logElasticBase;

    /// <summary>Prepares a hole.</summary>
    /// <param name="laminate">The class of laminate.</param>
    /// <param name="parameters">Figures of copper and resin.</param>
    /// <param name="pad">The hole.</param>
    public BarrelFatigue(LaminateLimits laminate, BarrelParameters parameters, PadGeometry.Through pad)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentNullException.ThrowIfNull(pad);
        _laminate = laminate;
        _parameters = parameters;
        _pad = pad;
        double ductility = parameters.FractureStrain.Central;
        _plasticAtOneCycle = Math.Pow(ductility, 0.75);
        _elasticFactor = 0.9 * (parameters.TensileStrength.Central / parameters.CopperModulus.Central);
        _logElasticBase = ductility - Math.Log(0.36);
    }

    /// <summary>Free mismatch strain between board and copper from rest to a peak, a1 (Tg - T0) + a2 (T - Tg) - aCu (T - T0).</summary>
    /// <param name="peak">Peak temperature of the whole board.</param>
    /// <returns>Strain with the central figures.</returns>
    public double FreeStrain(Temperature peak) => Mismatch(peak.DegreesCelsius, Central(_parameters.ResinModulus.Central));

    /// <summary>Cycles to failure when the whole board passes a peak, central figures but for the resin.</summary>
    /// <param name="peak">Peak temperature of the whole board.</param>
    /// <param name="resinModulus">Through-thickness modulus of the hot laminate, above zero.</param>
    /// <returns>Cycles, at least one.</returns>
    public double CyclesToFailure(Temperature peak, Pressure resinModulus) =>
        Life(Strain(peak.DegreesCelsius, Central(resinModulus), _pad.Copper.Central.Meters));

    /// <summary>
    /// Share of the barrel's life that one excursion uses; zero where the peak does not pass Tg. Favourable end: least expansion,
    /// highest Tg, softest resin, longest life; unfavourable end: the opposite. The wall's effect changes sign with the resin, so each
    /// end takes the better or worse of the wall's three values.
    /// </summary>
    /// <param name="peakCelsius">Peak temperature [°C].</param>
    /// <param name="region">How much of the board was hot; a single heated hole counts for a share only.</param>
    /// <returns>The share.</returns>
    public Spread Used(double peakCelsius, HeatedRegion region)
    {
        RatedEstimate<double> factor = _parameters.LifeFactor;
        RatedEstimate<double> local = _parameters.LocalShare;
        bool whole = region == HeatedRegion.WholeBoard;
        Case mild = new(_laminate.ExpansionBelow.Low, _laminate.ExpansionAbove.Low, _laminate.GlassTransition.High, _parameters.ResinModulus.Low);
        Case harsh = new(_laminate.ExpansionBelow.High, _laminate.ExpansionAbove.High, _laminate.GlassTransition.Low, _parameters.ResinModulus.High);
        Case central = Central(_parameters.ResinModulus.Central);
        return new Spread(
            (whole ? 1 : local.Low) * Wear(Strains(peakCelsius, mild).Low) / factor.High,
            (whole ? 1 : local.Central) * Wear(Strains(peakCelsius, central).Central) / factor.Central,
            (whole ? 1 : local.High) * Wear(Strains(peakCelsius, harsh).High) / factor.Low);
    }

    private Case Central(Pressure resinModulus) =>
        new(_laminate.ExpansionBelow.Central, _laminate.ExpansionAbove.Central, _laminate.GlassTransition.Central, resinModulus);

    private Spread Strains(double peakCelsius, Case at)
    {
        if (peakCelsius <= at.GlassTransition.DegreesCelsius)
        {
            return default;
        }

        // The life falls as the strain grows, so the ends of the strain are the ends of the life.
        double thin = Strain(peakCelsius, at, _pad.Copper.Low.Meters);
        double central = Strain(peakCelsius, at, _pad.Copper.Central.Meters);
        double thick = Strain(peakCelsius, at, _pad.Copper.High.Meters);
        return new Spread(Math.Min(central, Math.Min(thin, thick)), central, Math.Max(central, Math.Max(thin, thick)));
    }

    private double Mismatch(double peakCelsius, Case at)
    {
        double tg = at.GlassTransition.DegreesCelsius;
        double start = _parameters.StartTemperature.DegreesCelsius;
        double below = at.Below.PerKelvin * (Math.Min(peakCelsius, tg) - start);
        double above = at.Above.PerKelvin * Math.Max(0, peakCelsius - tg);
        return Math.Max(0, below + above - (_parameters.CopperExpansion.Central.PerKelvin * (peakCelsius - start)));
    }

    private double Strain(double peakCelsius, Case at, double wallM) => CopperStrain(Mismatch(peakCelsius, at), at.ResinModulus.Pascals, wallM);

    private double Wear(double strain) => strain > 0 ? 1 / Life(strain) : 0;

    private double Life(double strain)
    {
        double low = 0;
        double high = MostLogLife;
        while (high - low > 1e-10)
        {
            double middle = 0.5 * (low + high);
            (low, high) = StrainRange(middle) > strain ? (middle, high) : (low, middle);
        }

        return Math.Pow(10, low);
    }

    private double StrainRange(double logLife) =>
        (Math.Exp(-0.6 * Math.Log(10) * logLife) * _plasticAtOneCycle)
        + (_elasticFactor * Math.Exp(_logElasticBase * 0.1785 * (5 - logLife)));

    private double CopperStrain(double mismatch, double resinPa, double wallM)
    {
        double hole = _pad.Hole.Meters;
        double outer = hole + _pad.BoardThickness.Meters;
        double inner = hole - (2 * wallM);
        double board = Math.PI / 4 * ((outer * outer) - (hole * hole)) * resinPa;
        double copperArea = Math.PI / 4 * ((hole * hole) - (inner * inner));
        double elasticPa = _parameters.CopperModulus.Central.Pascals;
        double plasticPa = _parameters.PlasticModulus.Central.Pascals;
        double yieldPa = _parameters.YieldStrength.Central.Pascals;
        double stress = mismatch * board * elasticPa / (board + (copperArea * elasticPa));
        if (stress <= yieldPa)
        {
            return stress / elasticPa;
        }

        double shifted = mismatch + (yieldPa * (elasticPa - plasticPa) / (elasticPa * plasticPa));
        stress = shifted * board * plasticPa / (board + (copperArea * plasticPa));
        return (yieldPa / elasticPa) + ((stress - yieldPa) / plasticPa);
    }

    private readonly record struct Case(
        CoefficientOfThermalExpansion Below,
        CoefficientOfThermalExpansion Above,
        Temperature GlassTransition,
        Pressure ResinModulus);
}
