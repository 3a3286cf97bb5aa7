using ReworkThermal.Core.Damage.Dwelling;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>
/// Start reading this room here. The damage model of one pad: it turns temperature histories at the pad-to-laminate interface,
/// simulated or measured alike, into accumulated damage (<see cref="PadDamage"/>) and that into gauges and a
/// <see cref="HeatBudget"/>. It knows nothing of tools. Three copies of every sum run along: with all parameters at their
/// favourable end, at the centre, and at their unfavourable end; each is monotone in temperature and time, and so are the gauges.
/// Built once per pad geometry; immutable.
/// </summary>
public sealed class DamageModel
{
    private readonly IntermetallicGrowth _intermetallic;

    /// <summary>Prepares a pad.</summary>
    /// <param name="laminate">Class of the board's laminate.</param>
    /// <param name="parameters">Figures that do not depend on the class.</param>
    /// <param name="pad">Shape of the pad.</param>
    public DamageModel(LaminateLimits laminate, DamageParameters parameters, PadGeometry pad)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentNullException.ThrowIfNull(pad);
        Laminate = laminate;
        Parameters = parameters;
        Pad = pad;
        Kinetics = new LaminateKinetics(laminate, parameters.Laminate);
        Bond = new BondStrength(laminate, parameters.Adhesion, Kinetics);
        Barrel = pad is PadGeometry.Through through ? new BarrelFatigue(laminate, parameters.Barrel, through) : null;
        _intermetallic = new IntermetallicGrowth(parameters.Intermetallic);
    }

    /// <summary>Class of the board's laminate.</summary>
    public LaminateLimits Laminate { get; }

    /// <summary>Figures that do not depend on the class.</summary>
    public DamageParameters Parameters { get; }

    /// <summary>Shape of the pad.</summary>
    public PadGeometry Pad { get; }

    /// <summary>Delamination of this class: the quick way for a search over many histories.</summary>
    public LaminateKinetics Kinetics { get; }

    /// <summary>Bond of this class.</summary>
    public BondStrength Bond { get; }

    /// <summary>Fatigue of this barrel; null for a surface pad.</summary>
    public BarrelFatigue? Barrel { get; }

    /// <summary>A pad before its first logged exposure.</summary>
    /// <param name="prior">Assumed earlier heat.</param>
    /// <returns>Its state.</returns>
    public PadDamage Begin(PriorHeat prior)
    {
        ArgumentNullException.ThrowIfNull(prior);
        PadDamage start = new(prior)
        {
            Mild = default(DamageTrack) with { Copper = new CopperTrack(prior.CopperLost.Low.Meters, null) },
            Central = default(DamageTrack) with { Copper = new CopperTrack(prior.CopperLost.Central.Meters, null) },
            Harsh = default(DamageTrack) with { Copper = new CopperTrack(prior.CopperLost.High.Meters, null) },
        };
        DamageTrack least = Sum(start, prior.AtLeast).Mild;
        PadDamage likely = Sum(start, [.. prior.AtLeast, .. prior.LikelyMore]);
        DamageTrack most = Sum(start, [.. prior.AtLeast, .. prior.LikelyMore, .. prior.AtMostMore]).Harsh;
        return start with
        {
            Mild = least,
            Central = likely.Central,
            Harsh = most,
            LiquidSeconds = likely.LiquidSeconds,
            IntermetallicSquareUm2 = likely.IntermetallicSquareUm2,
        };
    }

    /// <summary>The pad after one more exposure. An exposure that takes no time changes nothing.</summary>
    /// <param name="before">The pad before it.</param>
    /// <param name="exposure">What the pad has had.</param>
    /// <returns>The pad after it.</returns>
    /// <exception cref="ArgumentException">The exposure goes on with a charge of solder, but none was given before.</exception>
    public PadDamage After(PadDamage before, PadExposure exposure)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(exposure);
        if (!exposure.TakesTime)
        {
            return before;
        }

        PadDamage after = Heat(before, exposure);
        bool newMelt = IsNewMelt(before, exposure);
        return after with
        {
            Exposures = before.Exposures + 1,
            LoggedMelts = before.LoggedMelts + (newMelt ? 1 : 0),
            MeltsWithoutCharge = before.MeltsWithoutCharge + (newMelt && exposure.Charge is null ? 1 : 0),
            PeakCelsius = Math.Max(before.PeakCelsius ?? double.NegativeInfinity, exposure.Interface.PeakCelsius),
        };
    }

    /// <summary>The pad after several exposures in order.</summary>
    /// <param name="before">The pad before them.</param>
    /// <param name="exposures">What the pad has had, in order.</param>
    /// <returns>The pad after them.</returns>
    public PadDamage After(PadDamage before, IEnumerable<PadExposure> exposures)
    {
        ArgumentNullException.ThrowIfNull(exposures);
        return exposures.Aggregate(before, After);
    }

    /// <summary>The gauges of a pad and what they mean together.</summary>
    /// <param name="state">The pad.</param>
    /// <returns>The budget.</returns>
    public HeatBudget Budget(PadDamage state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return new BudgetReading(this, state).Read();
    }

    /// <summary>What one more exposure would cost.</summary>
    /// <param name="before">The pad before it.</param>
    /// <param name="exposure">The exposure that is considered.</param>
    /// <returns>The budget before and after, and the difference gauge by gauge.</returns>
    public TouchCost CostOf(PadDamage before, PadExposure exposure)
    {
        HeatBudget now = Budget(before);
        HeatBudget then = Budget(After(before, exposure));
        return new TouchCost(now, then);
    }

    internal Spread IntermetallicUm(PadDamage state) =>
        _intermetallic.ThicknessUm(Duration.FromSeconds(state.LiquidSeconds), state.IntermetallicSquareUm2);

    internal Spread LaminateSum(PadDamage state) => new(
        Kinetics.LowEnd(state.Mild.Laminate),
        state.Central.Laminate.CentralEnergy,
        Kinetics.HighEnd(state.Harsh.Laminate));

    // A joint that is still molten from the exposure before does not melt again.
    private static bool IsNewMelt(PadDamage before, PadExposure exposure) =>
        exposure.Melted && !(exposure.Start == ExposureStart.StraightOn && before.MoltenAtEnd);

    /// <summary>What adhesion and the number of melts say after a job, whichever is more, at the centre of all ranges: their gauges' own figures.</summary>
    /// <param name="before">The pad before the job.</param>
    /// <param name="damageSum">Laminate damage sum of the job.</param>
    /// <param name="melts">Its melts.</param>
    /// <returns>Share of the limit [1].</returns>
    internal double ShareAfter(PadDamage before, double damageSum, int melts)
    {
        double dose = Kinetics.InStandardMelts(damageSum, Parameters.Adhesion.StandardTemperature, Parameters.Adhesion.StandardTime);
        double counted = Math.Min(dose, melts * Parameters.Adhesion.MostDose.Central);
        double kept = Bond.Central(
            before.Central.Laminate.CentralEnergy + damageSum,
            before.Central.Melts + melts,
            new MeltDose(before.Central.Dose.Counted + counted, before.Central.Dose.Covered + counted, 0));
        return Math.Max((1 - kept) / Parameters.Gauges.AdhesionLoss.Central, (double)(before.Central.Melts + melts) / Parameters.MeltCounts[^1].Count);
    }

    private PadDamage Sum(PadDamage start, IEnumerable<PriorStep> steps) => steps
        .Select(step => PadExposure.Steady(step.Temperature, step.Time, step.Melts, charge: null, step.Region))
        .Where(exposure => exposure.TakesTime)
        .Aggregate(start, Heat) with
    {
        MoltenAtEnd = false,
    };

    private PadDamage Heat(PadDamage before, PadExposure exposure)
    {
        LaminateSums spent = Kinetics.Spent(exposure.Interface);
        Spread barrel = Barrel?.Used(exposure.Interface.PeakCelsius, exposure.Region) ?? default;
        bool newMelt = IsNewMelt(before, exposure);
        double solidBelowC = !exposure.Melted ? double.PositiveInfinity
            : exposure.Charge?.MoltenAbove.DegreesCelsius ?? double.NegativeInfinity;
        RatedEstimate<Speed> rate = exposure.Charge?.Motion == SolderMotion.Flowing ? Parameters.Copper.FlowingRate : Parameters.Copper.StillRate;
        RatedEstimate<double> solubility = Parameters.Copper.SolubilityFactor;
        RatedEstimate<double> most = Parameters.Adhesion.MostDose;
        // Peel after one and after two reflows was found the same within 6 % (thesis abstract, Budapest): where the whole board is hot, a melt
        // is a standard one however long it lasts. Heat at one joint counts by temperature and time.
        double own = exposure.Region == HeatedRegion.WholeBoard
            ? 0
            : Kinetics.InStandardMelts(spent.CentralEnergy, Parameters.Adhesion.StandardTemperature, Parameters.Adhesion.StandardTime);
        double dose = exposure.Region == HeatedRegion.WholeBoard ? (newMelt ? 1 : 0) : own;
        RatedEstimate<double> nickel = Parameters.Copper.NickelFactor;
        Spread slowed = exposure.Charge?.HoldsNickel == true ? new Spread(nickel.Low, nickel.Central, nickel.High) : new Spread(1, 1, 1);
        return before with
        {
            Mild = Track(before.Mild, barrel.Low, rate.Low * slowed.Low, solubility.Low, most.Low),
            Central = Track(before.Central, barrel.Central, rate.Central * slowed.Central, solubility.Central, most.Central),
            Harsh = Track(before.Harsh, barrel.High, rate.High * slowed.High, solubility.High, most.High),
            MoltenAtEnd = exposure.Melted,
            LiquidSeconds = before.LiquidSeconds + (exposure.Melted ? CopperDissolution.SecondsAbove(exposure.Interface, solidBelowC) : 0),
            IntermetallicSquareUm2 = before.IntermetallicSquareUm2 + _intermetallic.SolidSquare(exposure.Interface, solidBelowC),
        };

        DamageTrack Track(DamageTrack track, double excursion, Speed speed, double factor, double mostDose) => track.WithExcursion(excursion, exposure.Start) with
        {
            Laminate = track.Laminate + spent,
            Melts = track.Melts + (newMelt ? 1 : 0),
            Dose = exposure.Melted ? track.Dose.With(dose, own, newMelt, mostDose) : track.Dose,
            Copper = exposure is { Melted: true, Charge: { } charge }
                ? CopperDissolution.After(track.Copper, exposure.Interface, charge, speed.MetersPerSecond, factor, Parameters.Copper.CopperDensity.Central.KilogramsPerCubicMeter)
                : track.Copper,
        };
    }
}
