using MathNet.Numerics.Integration;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>
/// Time to delamination against temperature, t(T) = T260 exp[(Ea/R)(1/T - 1/T0)], T0 = 260 °C, and the linear damage sum over a
/// history. Method: Hovel and Verbrugge, Base material selection for reliable lead-free processing, Circuit World 34(2), 2008, 3-7,
/// who derive Arrhenius parameters from T260 data and sum soldering scenarios; their parameter values were not to be had, so the
/// activation energy here is bracketed, not measured. Immutable and quick: built once per class, it serves thousands of
/// histories per second.
/// </summary>
public sealed class LaminateKinetics
{
    // Largest change of the Arrhenius exponent over one quadrature piece. With three Gauss-Legendre nodes the error of the
    // integral of exp(x) over a unit range is about 1e-6 of its value.
    private const double MostExponentStep = 1;

    // Below this the rate is under 1e-25 of that at 260 °C, so finer pieces would integrate nothing [K].
    private const double InertBelowK = 200;

    private static readonly GaussLegendreRule _rule = new(0, 1, 3);

    private readonly double _anchorK;
    private readonly double _errorK;
    private readonly double _lowB;
    private readonly double _centralB;
    private readonly double _highB;

    /// <summary>Prepares a class.</summary>
    /// <param name="limits">The class of laminate.</param>
    /// <param name="parameters">Activation energy and anchor.</param>
    public LaminateKinetics(LaminateLimits limits, LaminateParameters parameters)
    {
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(parameters);
        _anchorK = parameters.AnchorTemperature.Kelvins;
        _errorK = parameters.InterfaceError.Central.Kelvins;
        _lowB = parameters.ActivationEnergy.Low.JoulesPerMole / PhysicalConstants.MolarGas;
        _centralB = parameters.ActivationEnergy.Central.JoulesPerMole / PhysicalConstants.MolarGas;
        _highB = parameters.ActivationEnergy.High.JoulesPerMole / PhysicalConstants.MolarGas;
        CentralTimeS = limits.TimeToDelamination.Central.Seconds;
        LowFactor = CentralTimeS / limits.TimeToDelamination.High.Seconds;
        HighFactor = CentralTimeS / limits.TimeToDelamination.Low.Seconds;
    }

    /// <summary>T260 of the class, central [s].</summary>
    private double CentralTimeS { get; }

    private double LowFactor { get; }

    private double HighFactor { get; }

    /// <summary>Time to delamination at a steady temperature [s] with the central T260.</summary>
    /// <param name="temperature">Interface temperature.</param>
    /// <returns>Times with the lowest, central and highest activation energy, in that order; above the anchor the highest energy
    /// gives the shortest time, below it the longest.</returns>
    public (Duration LowEnergy, Duration CentralEnergy, Duration HighEnergy) TimeToDelamination(Temperature temperature)
    {
        double inverse = (1 / temperature.Kelvins) - (1 / _anchorK);
        return (At(_lowB), At(_centralB), At(_highB));

        Duration At(double b) => Duration.FromSeconds(CentralTimeS * Math.Exp(b * inverse));
    }

    /// <summary>Damage sums of one history; linear between samples, zero for a single sample.</summary>
    /// <param name="history">Temperature of the pad-to-laminate interface, simulated or measured.</param>
    /// <returns>What the history costs.</returns>
    public LaminateSums Spent(TemperatureHistory history)
    {
        ArgumentNullException.ThrowIfNull(history);
        ReadOnlySpan<double> seconds = history.Seconds;
        ReadOnlySpan<double> celsius = history.Celsius;
        LaminateSums total = default;
        for (int i = 1; i < seconds.Length; i++)
        {
            total += Segment(celsius[i - 1] + 273.15, celsius[i] + 273.15, seconds[i] - seconds[i - 1]);
        }

        return total;
    }

    /// <summary>Damage sums of a steady temperature.</summary>
    /// <param name="temperature">Interface temperature.</param>
    /// <param name="time">How long; not negative.</param>
    /// <returns>What it costs.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    public LaminateSums Spent(Temperature temperature, Duration time)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(time.Seconds, nameof(time));
        return Rate(temperature.Kelvins, time.Seconds);
    }

    /// <summary>
    /// Share of the laminate's life: low = smallest over the three activation energies with the longest T260; high = greatest over
    /// them with the shortest. The sum is convex in the activation energy, so its greatest value lies at an end of the range and the
    /// high figure is a true bound; the low figure is the smallest of the three, which a value in between could undercut slightly.
    /// </summary>
    /// <param name="sums">Damage sums.</param>
    /// <returns>The share; 1 is delamination.</returns>
    public Spread Share(LaminateSums sums) => new(
        LowEnd(sums),
        sums.CentralEnergy,
        HighEnd(sums));

    /// <summary>
    /// A damage sum in standard melts: the same Arrhenius integral, exp[(Ea/R)(1/Ts - 1/T)] dt over ts, with the central activation energy.
    /// </summary>
    /// <param name="sum">Damage sum with the central activation energy.</param>
    /// <param name="standard">Temperature Ts of a standard melt.</param>
    /// <param name="time">Its length ts.</param>
    internal double InStandardMelts(double sum, Temperature standard, Duration time) =>
        sum * TimeToDelamination(standard).CentralEnergy.Seconds / time.Seconds;

    internal double LowEnd(LaminateSums sums) => LowFactor * Math.Min(sums.CentralEnergy, Math.Min(sums.LowEnergy, sums.HighEnergy));

    internal double HighEnd(LaminateSums sums) => HighFactor * Math.Max(sums.CentralEnergy, Math.Max(sums.LowEnergy, sums.HighEnergy));

    private LaminateSums Segment(double fromK, double toK, double seconds)
    {
        if (fromK == toK)
        {
            return Rate(fromK, seconds);
        }

        double coldestK = Math.Max(InertBelowK, Math.Min(fromK, toK) - _errorK);
        int pieces = Math.Max(1, (int)Math.Ceiling(_highB * Math.Abs(toK - fromK) / (coldestK * coldestK) / MostExponentStep));
        double stepK = (toK - fromK) / pieces;
        double stepS = seconds / pieces;
        LaminateSums total = default;
        for (int piece = 0; piece < pieces; piece++)
        {
            double startK = fromK + (piece * stepK);
            for (int node = 0; node < _rule.Order; node++)
            {
                total += Rate(startK + (_rule.GetAbscissa(node) * stepK), stepS * _rule.GetWeight(node));
            }
        }

        return total;
    }

    private LaminateSums Rate(double kelvin, double seconds)
    {
        double dose = seconds / CentralTimeS;
        double inverse = (1 / _anchorK) - (1 / kelvin);
        double cooler = (1 / _anchorK) - (1 / Math.Max(1, kelvin - _errorK));
        double hotter = (1 / _anchorK) - (1 / (kelvin + _errorK));
        return new LaminateSums(
            dose * Math.Exp(_lowB * inverse),
            dose * Math.Exp(_centralB * inverse),
            dose * Math.Exp(_highB * inverse),
            dose * Math.Exp(_centralB * cooler),
            dose * Math.Exp(_centralB * hotter));
    }
}

/// <summary>Figures of the delamination sum that do not depend on the class of laminate.</summary>
/// <param name="ActivationEnergy">Apparent activation energy of delamination [J/mol].</param>
/// <param name="AnchorTemperature">Temperature of the T260 test [°C], at which the class's time holds.</param>
/// <param name="ExtrapolatedAbove">Interface temperature [°C] above which one-step kinetics is extrapolated and doubtful.</param>
/// <param name="InterfaceError">Error of the interface temperature [K] at which the sensitivity of the sum is shown.</param>
public sealed record LaminateParameters(
    RatedEstimate<MolarEnergy> ActivationEnergy,
    Temperature AnchorTemperature,
    RatedEstimate<Temperature> ExtrapolatedAbove,
    RatedEstimate<TemperatureDelta> InterfaceError);
