using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>
/// What the pads of a job are judged with: the joints they belong to, the solder that was in them, the models. Remembers what it has
/// computed; one object serves one thread.
/// </summary>
/// <param name="engine">Phase equilibria.</param>
/// <param name="properties">Density and conductivity rules.</param>
/// <param name="limits">Damage limits.</param>
/// <param name="removal">How molten solder is taken out.</param>
/// <param name="tools">Tools by name.</param>
/// <param name="find">Reads the designation of an alloy.</param>
public sealed class JobBench(
    PhaseEngine engine,
    SolderProperties properties,
    DamageLimits limits,
    RemovalMethod removal,
    IToolShelf tools,
    Func<string, DesignationReading> find)
{
    private readonly Dictionary<MassFractions, MeltingOutcome> _melting = [];
    private readonly Dictionary<MassFractions, TabulatedSolubility?> _solubility = [];
    private readonly Dictionary<JointSite, DamageModel> _models = [];

    /// <summary>Damage limits.</summary>
    public DamageLimits Limits => limits;

    /// <summary>How molten solder is taken out.</summary>
    public RemovalMethod Removal => removal;

    internal Func<string, DesignationReading> Find => find;

    internal SolderProperties Properties => properties;

    /// <summary>How a solder melts; remembered.</summary>
    /// <param name="solder">Composition by mass.</param>
    /// <returns>The behaviour, or why there is none.</returns>
    public MeltingOutcome MeltingOf(MassFractions solder)
    {
        ArgumentNullException.ThrowIfNull(solder);
        if (!_melting.TryGetValue(solder, out MeltingOutcome? outcome))
        {
            outcome = engine.MeltingOf(solder);
            _melting[solder] = outcome;
        }

        return outcome;
    }

    /// <summary>How a solder freezes on real cooling.</summary>
    /// <param name="solder">Composition by mass.</param>
    /// <returns>The path, or why there is none.</returns>
    public ScheilOutcome FreezingOf(MassFractions solder) => engine.SolidifyWithoutDiffusion(solder);

    /// <summary>The damage model of a joint's pads.</summary>
    /// <param name="site">The joint on its board.</param>
    /// <returns>The model.</returns>
    /// <exception cref="ArgumentException">The board's class of laminate is unknown.</exception>
    public DamageModel ModelOf(JointSite site)
    {
        ArgumentNullException.ThrowIfNull(site);
        if (!_models.TryGetValue(site, out DamageModel? model))
        {
            string name = site.Board.Laminate.ClassName;
            LaminateLimits laminate = limits.LaminateOrNull(name) ?? throw new ArgumentException($"unknown class of laminate '{name}'", nameof(site));
            model = new DamageModel(laminate, limits.Parameters, PadShape.Of(site));
            _models[site] = model;
        }

        return model;
    }

    /// <summary>Assumption about earlier heat for what a person stated; the first of the data file when nobody stated one.</summary>
    /// <param name="condition">What was stated; null when nobody did.</param>
    /// <returns>The assumption.</returns>
    public PriorHeat PriorOf(PriorCondition? condition)
    {
        string name = (condition ?? PriorCondition.Sound).Word();
        return limits.PriorOrNull(name) ?? throw new InvalidOperationException($"the data file of earlier heat has no entry '{name}'");
    }

    /// <summary>Simulates a touch on a joint.</summary>
    /// <param name="site">The joint on its board.</param>
    /// <param name="use">Tools and settings.</param>
    /// <param name="solder">Solder on the joint.</param>
    /// <param name="dwell">Length of contact, above zero.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The history, or why there is none.</returns>
    public TouchSimulation Simulate(JointSite site, ToolUse use, SolderCharge solder, Duration dwell, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(solder);
        if (MeltingOf(solder.Fractions) is not MeltingOutcome.Found melting)
        {
            return new TouchSimulation.Failed($"the melting of {solder.Fractions} could not be computed");
        }

        double factor = FillOf(site, solder);
        return tools.Resolve(use, site) switch
        {
            ToolsOutcome.Ready ready => new TouchHistory(site, new SolderHeat(properties)).Simulate(melting.Behaviour, factor, ready.Tools, dwell, cancellation),
            ToolsOutcome.Refused refused => new TouchSimulation.Failed(refused.Reason),
            _ => throw new InvalidOperationException("unknown kind of tools outcome"),
        };
    }

    /// <summary>How full of its solder a joint is.</summary>
    /// <param name="site">The joint on its board.</param>
    /// <param name="solder">Solder on the joint.</param>
    /// <returns>Mass over the mass that fills the joint [1].</returns>
    public double FillOf(JointSite site, SolderCharge solder)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(solder);
        return solder.Amount / JointContents.Full(site, solder.Fractions, properties).Amount;
    }

    /// <summary>What molten solder does to the copper of a joint; null when that is not known.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="solder">Composition of the solder.</param>
    /// <param name="freshCopper">Copper in a fresh charge; null when the charge stays.</param>
    /// <param name="isBath">Whether it is an open supply that never saturates.</param>
    /// <returns>The contact.</returns>
    internal MoltenContact? ContactOf(Joint joint, MassFractions solder, double? freshCopper, bool isBath)
    {
        if (MeltingOf(solder) is not MeltingOutcome.Found melting)
        {
            return null;
        }

        Temperature flow = melting.Behaviour.Flow;
        if (!_solubility.TryGetValue(solder, out TabulatedSolubility? solubility))
        {
            solubility = CopperBath.Solubility(engine, solder, flow);
            _solubility[solder] = solubility;
        }

        return solubility is null
            ? null
            : new MoltenContact(
                solubility,
                flow,
                properties.MeltDensity(solder, flow),
                isBath ? null : CopperBath.VolumeToArea(joint),
                freshCopper,
                isBath ? SolderMotion.Flowing : SolderMotion.Still,
                CopperBath.HoldsNickel(solder));
    }
}
