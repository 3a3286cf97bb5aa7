using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Solders;

/// <summary>Turns what the phase engine found into answers.</summary>
/// <param name="engine">The phase engine.</param>
/// <param name="properties">Density rules.</param>
public sealed class MeltReporting(PhaseEngine engine, SolderProperties properties)
{
    /// <summary>Shares below this are rounding, not a phase [kg/kg].</summary>
    private const double LeastShare = 1e-6;

    /// <summary>A difference of temperatures that a reader sees [K].</summary>
    private const double Noticed = 0.05;

    private const string Undercooling =
        "Undercooling is not modelled: tin-rich solder may stay liquid tens of kelvins below these temperatures before it freezes.";

    /// <summary>Melting behaviour of a solder.</summary>
    /// <param name="solder">Composition by mass.</param>
    /// <param name="notes">What was assumed before, one sentence each.</param>
    /// <param name="sources">Citations of the data used.</param>
    /// <returns>The answer; not converged, or outside the model, is an answer too.</returns>
    public MeltReport Melting(MassFractions solder, IReadOnlyList<string> notes, IReadOnlyList<string> sources)
    {
        ArgumentNullException.ThrowIfNull(notes);
        return engine.MeltingOf(solder) switch
        {
            MeltingOutcome.Found found => Cooled(found.Behaviour, notes, sources),
            MeltingOutcome.SolidusOnly only => new MeltReport.SolidusOnly(
                solder, only.Solidus, only.Reason, only.Uncertainty, [BasisOf(solder), .. only.Caveats], [.. notes, Undercooling], sources),
            { Lack: { } reason } => new MeltReport.NotConverged(solder, reason, notes, sources),
            _ => throw new InvalidOperationException("unknown kind of outcome"),
        };
    }

    /// <summary>Melt curve of a solder.</summary>
    /// <param name="behaviour">What the engine found.</param>
    /// <param name="notes">What was assumed before, one sentence each.</param>
    /// <param name="sources">Citations of the data used.</param>
    /// <returns>The answer.</returns>
    public static MeltCurveReport Curve(MeltingBehaviour behaviour, IReadOnlyList<string> notes, IReadOnlyList<string> sources)
    {
        ArgumentNullException.ThrowIfNull(behaviour);
        return new MeltCurveReport(
            behaviour.Composition,
            [.. behaviour.Curve.Points.Select(p => new CurvePoint(
                p.Temperature,
                p.LiquidMassFraction,
                p.Enthalpy,
                [.. p.Phases.Where(s => s.MassFraction > LeastShare).Select(s => s.ShownAs)]))],
            behaviour.Uncertainty,
            [.. notes, .. behaviour.Caveats],
            sources);
    }

    /// <summary>Melting behaviour that has been computed already.</summary>
    /// <param name="melting">How the solder melts.</param>
    /// <param name="freezing">How it freezes on real cooling; null when that could not be followed.</param>
    /// <param name="notes">What was assumed before, one sentence each.</param>
    /// <param name="sources">Citations of the data used.</param>
    /// <returns>The answer.</returns>
    public MeltReport.Computed Computed(MeltingBehaviour melting, ScheilPath? freezing, IReadOnlyList<string> notes, IReadOnlyList<string> sources)
    {
        ArgumentNullException.ThrowIfNull(melting);
        ArgumentNullException.ThrowIfNull(notes);
        return new MeltReport.Computed(
            melting.Composition,
            melting.Solidus,
            melting.Liquidus,
            melting.Flow,
            freezing?.End,
            freezing?.LiquidMassFractionAt(ServiceTemperatures.Warm),
            melting.LatentHeat,
            properties.SolidDensity(melting.Composition),
            PhasesOf(melting.Curve),
            melting.Uncertainty,
            melting.SolidusRise,
            [BasisOf(melting.Composition), .. melting.Caveats],
            [.. notes, .. EndOverSolidus(melting, freezing), Undercooling],
            sources);
    }

    // Either less than 0.01 % of the mass is followed no further, or two reactions a few tenths of a kelvin apart share the last liquid
    // differently; both were proven with the tangent plane on 10,000 random compositions.
    private static IReadOnlyList<string> EndOverSolidus(MeltingBehaviour melting, ScheilPath? freezing) =>
        freezing is null || freezing.End.Kelvins <= melting.Solidus.Kelvins + Noticed ? []
        : freezing.LiquidMassFractions[^1] > 0 ? ["The Scheil end stands above the solidus because real cooling is followed until 0.01 % of the mass is liquid; the last trace freezes lower."]
        : ["The Scheil end stands above the solidus: real cooling ends in another reaction than equilibrium does."];

    private MeltReport.Computed Cooled(MeltingBehaviour melting, IReadOnlyList<string> notes, IReadOnlyList<string> sources)
    {
        ScheilOutcome cooling = engine.SolidifyWithoutDiffusion(melting.Composition);
        string? failure = cooling switch
        {
            ScheilOutcome.NotConverged failed => failed.Reason,
            ScheilOutcome.OutsideModel outside => outside.Reason,
            _ => null,
        };
        return Computed(
            melting,
            (cooling as ScheilOutcome.Found)?.Path,
            failure is null ? notes : [.. notes, "Real cooling could not be followed: " + failure],
            sources);
    }

    private static IReadOnlyList<PhaseLine> PhasesOf(MeltCurve curve) =>
    [
        .. curve.Points
            .SelectMany(p => p.Phases.Where(s => s.MassFraction > LeastShare).Select(s => (p.Temperature, Share: s)))
            .GroupBy(s => s.Share.Name, StringComparer.Ordinal)
            .Select(g => new PhaseLine(
                g.Key,
                g.First().Share.ShownAs,
                g.MinBy(s => s.Temperature.Kelvins).Temperature,
                g.MaxBy(s => s.Temperature.Kelvins).Temperature,
                g.Max(s => s.Share.MassFraction)))
            .OrderByDescending(p => p.GreatestShare),
    ];

    private static string BasisOf(MassFractions solder)
    {
        int elements = solder.Present.Count();
        return elements switch
        {
            1 => "A pure element.",
            2 => "Two elements: published assessments meet measured points within about 1 to 2 K.",
            _ => string.Create(CultureInfo.InvariantCulture, $"{elements} elements: published assessments meet measured points within about 2 to 5 K."),
        };
    }
}
