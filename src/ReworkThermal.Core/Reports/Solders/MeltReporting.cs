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
            MeltingOutcome.NotConverged failed => new MeltReport.NotConverged(solder, failed.Reason, notes, sources),
            MeltingOutcome.OutsideModel outside => new MeltReport.NotConverged(solder, outside.Reason, notes, sources),
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
            [BasisOf(melting.Composition), .. melting.Caveats],
            [.. notes, Undercooling],
            sources);
    }

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
