using System.Globalization;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Damage;

/// <summary>Reads the gauges of a pad's state.</summary>
/// <param name="model">The pad's model.</param>
/// <param name="state">The pad's state.</param>
internal sealed class BudgetReading(DamageModel model, PadDamage state)
{
    private readonly DamageParameters _parameters = model.Parameters;

    internal HeatBudget Read()
    {
        Spread sum = model.LaminateSum(state);
        List<Gauge> gauges = [Laminate(sum), Adhesion(sum), Copper()];
        if (model.Barrel is not null)
        {
            gauges.Add(Barrel());
        }

        gauges.Add(Melts());
        Gauge governing = gauges.MaxBy(g => g.Share.Central)!;
        Spread share = new(gauges.Max(g => g.Share.Low), governing.Share.Central, gauges.Max(g => g.Share.High));
        DamageBand worst = _parameters.Gauges.BandOf(share.High);
        double limit = _parameters.Gauges.Laminate.Central;
        return new HeatBudget(
            gauges,
            governing,
            share,
            governing.Band,
            worst,
            Reason(governing, share, worst),
            state.Central.Laminate.Cooler / limit,
            state.Central.Laminate.Hotter / limit,
            model.IntermetallicUm(state),
            Omissions(),
            Assumptions(sum));
    }

    private static SupportLevel Weakest(params ReadOnlySpan<SupportLevel> levels)
    {
        SupportLevel weakest = SupportLevel.Supported;
        foreach (SupportLevel level in levels)
        {
            weakest = level > weakest ? level : weakest;
        }

        return weakest;
    }

    private static string Reason(Gauge governing, Spread share, DamageBand worst)
    {
        string far = worst > governing.Band
            ? string.Create(CultureInfo.InvariantCulture, $"; with every figure at its unfavourable end {share.High * 100:0} %, band {worst.Word()}")
            : string.Empty;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{(governing.Kind is GaugeKind.Melts ? "number of " : string.Empty)}{governing.Kind.Word()} governs with {share.Central * 100:0} % of its limit, band {governing.Band.Word()}{far}");
    }

    private Gauge Make(GaugeKind kind, Spread value, string unit, double limit, SupportLevel support, string reason)
    {
        Spread share = value.Times(1 / limit);
        return new Gauge(kind, value, unit, share, _parameters.Gauges.BandOf(share.Central), _parameters.Gauges.BandOf(share.High), support, reason);
    }

    private Gauge Laminate(Spread sum) => Make(
        GaugeKind.Laminate,
        sum,
        "damage sum, 1 is delamination",
        _parameters.Gauges.Laminate.Central,
        Weakest(model.Laminate.TimeToDelamination.Support, _parameters.Laminate.ActivationEnergy.Support, _parameters.Gauges.Laminate.Support),
        "time to delamination by Arrhenius from the class's T260; the activation energy is bracketed, not measured");

    private Gauge Adhesion(Spread sum)
    {
        RatedEstimate<double> loss = _parameters.Adhesion.LossPerMelt;
        Spread kept = model.Bond.Of(sum, state);
        Spread lost = new(1 - kept.High, 1 - kept.Central, 1 - kept.Low);
        return Make(
            GaugeKind.Adhesion,
            lost,
            "share of the bond lost",
            _parameters.Gauges.AdhesionLoss.Central,
            Weakest(loss.Support, _parameters.Adhesion.DoseShare.Support, _parameters.Laminate.ActivationEnergy.Support, _parameters.Gauges.AdhesionLoss.Support),
            "the loss per melt, and how much of it goes with its heat, is judgement, bounded by pull limits after rework tests");
    }

    private Gauge Copper()
    {
        CopperParameters copper = _parameters.Copper;
        Evidence.Estimate<UnitsNet.Length> made = model.Pad.Copper;
        Spread used = new(
            Used(state.Mild.Copper.LostM, made.High.Meters, copper.LeastWall.Low.Meters),
            Used(state.Central.Copper.LostM, made.Central.Meters, copper.LeastWall.Central.Meters),
            Used(state.Harsh.Copper.LostM, made.Low.Meters, copper.LeastWall.High.Meters));
        return Make(
            GaugeKind.Copper,
            used,
            "share of the copper above the least wall that is dissolved",
            _parameters.Gauges.Copper.Central,
            Weakest(copper.StillRate.Support, copper.FlowingRate.Support, copper.SolubilityFactor.Support, copper.LeastWall.Support),
            "dissolution by the Nernst-Brunner law with a fitted rate, against an experience-based least wall at the knee");
    }

    // A wall that was made no thicker than the least wall is spent from the start, and every loss adds to that.
    private static double Used(double lostM, double madeM, double leastM) =>
        madeM > leastM ? lostM / (madeM - leastM) : 1 + (lostM / madeM);

    private Gauge Barrel()
    {
        BarrelParameters barrel = _parameters.Barrel;
        return Make(
            GaugeKind.Barrel,
            new Spread(state.Mild.Barrel, state.Central.Barrel, state.Harsh.Barrel),
            "fatigue sum, 1 is the computed life",
            _parameters.Gauges.Barrel.Central,
            Weakest(barrel.FractureStrain.Support, barrel.ResinModulus.Support, barrel.LifeFactor.Support, barrel.LocalShare.Support, _parameters.Gauges.Barrel.Support),
            "strain past Tg by a fatigue relation whose error is a factor of two");
    }

    private Gauge Melts()
    {
        PublishedMeltCount fewest = _parameters.MeltCounts[0];
        PublishedMeltCount most = _parameters.MeltCounts[^1];
        double limit = most.Count;

        // The unfavourable end counts against the least demanding test.
        Spread value = new(state.Mild.Melts, state.Central.Melts, state.Harsh.Melts);
        Spread share = new(value.Low / limit, value.Central / limit, value.High / fewest.Count);
        return new Gauge(
            GaugeKind.Melts,
            value,
            "melts",
            share,
            _parameters.Gauges.BandOf(share.Central),
            _parameters.Gauges.BandOf(share.High),
            Weakest(most.Support, fewest.Support),
            string.Create(
                CultureInfo.InvariantCulture,
                $"published tests cover {string.Join(", ", _parameters.MeltCounts.Select(c => c.Count.ToString(CultureInfo.InvariantCulture)))} melts; they are tests to pass, not a known end of life"));
    }

    private List<GaugeOmission> Omissions()
    {
        List<GaugeOmission> omissions = [];
        if (model.Barrel is null)
        {
            omissions.Add(new GaugeOmission(GaugeKind.Barrel, "a surface pad has no barrel"));
        }

        if (state.MeltsWithoutCharge > 0)
        {
            omissions.Add(new GaugeOmission(GaugeKind.Copper, string.Create(
                CultureInfo.InvariantCulture,
                $"the solder of {state.MeltsWithoutCharge} melted exposure(s) is unknown, and the copper it took is not counted")));
        }

        return omissions;
    }

    private List<string> Assumptions(Spread sum)
    {
        List<string> assumptions =
        [
            $"earlier heat is assumed, not known: {state.Prior.Description}",
            string.Create(
                CultureInfo.InvariantCulture,
                $"an interface {_parameters.Laminate.InterfaceError.Central.Kelvins:0.#} K cooler or hotter than stated would make the laminate sum {state.Central.Laminate.Cooler:0.###} or {state.Central.Laminate.Hotter:0.###} instead of {sum.Central:0.###}"),
            "the ends of each range put every figure at its favourable or unfavourable end together; they are no confidence interval",
            .. model.Laminate.Notes,
        ];
        if (state.PeakCelsius is { } peak && peak > _parameters.Laminate.ExtrapolatedAbove.Central.DegreesCelsius)
        {
            assumptions.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"the interface reached {peak:0} °C; above {_parameters.Laminate.ExtrapolatedAbove.Central.DegreesCelsius:0} °C the laminate law is extrapolated and doubtful"));
        }

        return assumptions;
    }
}
