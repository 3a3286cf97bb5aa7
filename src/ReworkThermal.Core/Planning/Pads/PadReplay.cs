using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;

namespace ReworkThermal.Core.Planning.Pads;

/// <summary>
/// Turns what was logged about a pad into damage: every exposure's temperature history, as measured or simulated when it was logged,
/// or simulated now when none was kept; its solder with the copper solubility of the actual mix; and the heat budget that follows.
/// The same ledger always gives the same account.
/// </summary>
/// <param name="bench">Models and tools.</param>
public sealed class PadReplay(JobBench bench)
{
    /// <summary>A touch that begins within this time after another continues it: the joint has not frozen in between.</summary>
    private const double StraightOnSeconds = 1;

    /// <summary>Judges a pad.</summary>
    /// <param name="ledger">What was logged.</param>
    /// <param name="site">The joint it belongs to.</param>
    /// <param name="baseSolder">Solder that arrived in it.</param>
    /// <param name="cancellation">Stops simulations.</param>
    /// <returns>The account.</returns>
    public PadAccount Of(PadLedger ledger, JointSite site, MassFractions baseSolder, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(ledger);
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(baseSolder);
        DamageModel model = bench.ModelOf(site);
        PriorHeat prior = bench.PriorOf(ledger.Prior);
        SolderCharge full = JointContents.Full(site, baseSolder, bench.Properties);
        JointContents contents = new(full, bench.Removal.Efficiency.Central, bench.Find);
        Walk walk = new(model.Begin(prior));
        foreach (PadHeat heat in ledger.Heats)
        {
            cancellation.ThrowIfCancellationRequested();
            Take(walk, heat, site, model, contents, cancellation);
        }

        return new PadAccount(
            ledger,
            site,
            model,
            prior,
            walk.Damage,
            model.Budget(walk.Damage),
            contents.Now,
            walk.Steps,
            walk.NotCounted,
            [.. contents.Notes, .. walk.Notes])
        {
            Full = full,
            HasCharge = walk.HasCharge,
            EndedAt = walk.EndedAt,
        };
    }

    /// <summary>Judges one more exposure, as <see cref="Of"/> would with it at the end of the ledger.</summary>
    /// <param name="account">The pad as it is.</param>
    /// <param name="next">The exposure, later than all others.</param>
    /// <param name="cancellation">Stops a simulation.</param>
    /// <returns>What it does to the pad.</returns>
    public PadStep After(PadAccount account, PadHeat next, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(account);
        ArgumentNullException.ThrowIfNull(next);
        Walk walk = new(account.Damage) { HasCharge = account.HasCharge, EndedAt = account.EndedAt };
        Take(walk, next, account.Site, account.Model, ContentsOf(account), cancellation);
        return walk.Steps[0];
    }

    /// <summary>Solder that would be on the joint during one more touch.</summary>
    /// <param name="account">The pad as it is.</param>
    /// <param name="touch">The touch.</param>
    /// <returns>Mass and composition.</returns>
    public SolderCharge SolderDuring(PadAccount account, Exposure touch)
    {
        ArgumentNullException.ThrowIfNull(account);
        ArgumentNullException.ThrowIfNull(touch);
        JointContents contents = ContentsOf(account);
        contents.Bring(touch, 0);
        return contents.Now;
    }

    private JointContents ContentsOf(PadAccount account) => new(account.Full, bench.Removal.Efficiency.Central, bench.Find) { Now = account.Contents };

    private void Take(Walk walk, PadHeat heat, JointSite site, DamageModel model, JointContents contents, CancellationToken cancellation)
    {
        Exposure touch = heat.Touch;
        bool isFresh = contents.Bring(touch, heat.Number);
        SolderCharge solder = contents.Now;
        (TemperatureHistory? history, bool? simulatedMelt) = HistoryOf(walk, heat, site, solder, cancellation);
        if (history is null)
        {
            walk.NotCounted++;
            walk.Steps.Add(new PadStep(heat, null, true, heat.Share.Melted ?? false, solder, walk.Damage));
            return;
        }

        bool melted = heat.Share.Melted ?? simulatedMelt ?? Melts(walk, heat, history, solder.Fractions);
        bool isBath = touch.Tools.Any(t => t is Jobs.ToolSetting.Bath);
        MoltenContact? charge = melted
            ? bench.ContactOf(site.Joint, solder.Fractions, isFresh || isBath || !walk.HasCharge ? solder.Fractions[Element.Cu] : null, isBath)
            : null;
        PadExposure exposure = new(history, melted, charge, RegionOf(touch), StartOf(walk, touch));
        walk.HasCharge |= charge is not null && exposure.TakesTime;
        walk.Damage = model.After(walk.Damage, exposure);
        walk.EndedAt = touch.StartedAt.AddSeconds(touch.Dwell.Seconds);
        walk.Steps.Add(new PadStep(heat, history, heat.Share.Series?.Origin != SeriesOrigin.Measured, melted, solder, walk.Damage));
        if (melted)
        {
            contents.Leave(touch.Purpose);
        }
    }

    private (TemperatureHistory? History, bool? Melted) HistoryOf(Walk walk, PadHeat heat, JointSite site, SolderCharge solder, CancellationToken cancellation)
    {
        if (heat.Share.Series is { } series)
        {
            return (series.History, null);
        }

        if (heat.Touch.Dwell.Seconds <= 0)
        {
            return (new TemperatureHistory([0], [20]), false);
        }

        if (!heat.Share.Touched)
        {
            walk.Note(heat.Number, "the pad was near the tool, not under it, and no temperature was logged: this heat is not counted");
            return default;
        }

        switch (bench.Simulate(site, ToolUse.Of(heat.Touch), solder, heat.Touch.Dwell, cancellation))
        {
            case TouchSimulation.Completed done:
                walk.Note(heat.Number, done.Tools.Assumed.Count == 0
                    ? "no temperature was logged with it; it was simulated now"
                    : $"no temperature was logged with it; it was simulated now. Not recorded, and assumed: {string.Join("; ", done.Tools.Assumed)}");
                return (done.Pad, done.Melted);
            case TouchSimulation.Failed failed:
                walk.Note(heat.Number, $"no temperature was logged with it and it cannot be simulated ({failed.Reason}): this heat is NOT counted");
                return default;
            default:
                throw new InvalidOperationException("unknown kind of simulation");
        }
    }

    private bool Melts(Walk walk, PadHeat heat, TemperatureHistory history, MassFractions solder)
    {
        if (bench.MeltingOf(solder) is MeltingOutcome.Found found)
        {
            return history.PeakCelsius >= found.Behaviour.Flow.DegreesCelsius;
        }

        walk.Note(heat.Number, "whether the joint melted is not known; it is counted as a melt");
        return true;
    }

    private static HeatedRegion RegionOf(Exposure touch) =>
        touch.Tools.All(t => t is Jobs.ToolSetting.Preheater) ? HeatedRegion.WholeBoard : HeatedRegion.Local;

    private static ExposureStart StartOf(Walk walk, Exposure touch) =>
        walk.EndedAt is { } ended && (touch.StartedAt - ended).TotalSeconds < StraightOnSeconds ? ExposureStart.StraightOn : ExposureStart.AfterCooling;

    private sealed class Walk(PadDamage start)
    {
        internal PadDamage Damage { get; set; } = start;

        internal List<PadStep> Steps { get; } = [];

        internal List<string> Notes { get; } = [];

        internal int NotCounted { get; set; }

        internal bool HasCharge { get; set; }

        internal DateTimeOffset? EndedAt { get; set; }

        internal void Note(int number, string what) => Notes.Add(string.Create(CultureInfo.InvariantCulture, $"Touch {number}: {what}."));
    }
}

/// <summary>What one exposure did to a pad.</summary>
/// <param name="Heat">The exposure.</param>
/// <param name="Interface">Temperature at the pad-to-laminate interface; null when it is not known and the exposure is not counted.</param>
/// <param name="Simulated">Whether the temperature was computed, not measured.</param>
/// <param name="Melted">Whether the joint melted.</param>
/// <param name="Solder">Solder in the joint while it was hot.</param>
/// <param name="After">The pad after it.</param>
public sealed record PadStep(PadHeat Heat, TemperatureHistory? Interface, bool Simulated, bool Melted, SolderCharge Solder, PadDamage After);
