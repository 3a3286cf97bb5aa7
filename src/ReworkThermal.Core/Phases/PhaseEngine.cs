using System.Collections.Concurrent;
using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Core.Phases.Solving;
using UnitsNet;

namespace ReworkThermal.Core.Phases;

/// <summary>
/// Phase equilibria of solder alloys. Start reading this room here: <see cref="ThermodynamicDatabase"/> is the data (folder
/// Parameters), a Gibbs energy per phase is evaluated from it (<c>Solving/GibbsSurfaces</c>), equilibrium is the tangent plane under
/// which no phase lies (<c>Solving/GlobalSearch</c>, <c>Solving/AssemblageSolver</c>), and melting is that equilibrium followed down
/// from the liquidus (<c>Solving/CoolingPath</c>). Safe to use from several threads at once.
/// </summary>
public sealed class PhaseEngine
{
    /// <summary>Largest inert trace [kg/kg] that is carried along, nickel aside.</summary>
    public const double MostInertTrace = AlloyDesignation.MostTracePercent / 100;

    /// <summary>Largest content of nickel [kg/kg] that is carried along.</summary>
    public const double MostNickel = AlloyDesignation.MostNickelPercent / 100;

    /// <summary>Mole fractions below this are left out.</summary>
    private const double Absent = 1e-9;

    /// <summary>Mass fraction of copper [kg/kg] with which a solder is asked whether its mix with copper may be answered.</summary>
    private const double TypicalCopper = 0.01;

    /// <summary>Room for rounding of mass fractions at a limit.</summary>
    private const double Rounding = 1e-9;

    private readonly ThermodynamicDatabase _database;
    private readonly ConcurrentDictionary<int, ReducedSystem> _systems = new();

    /// <summary>Creates an engine.</summary>
    /// <param name="database">The thermodynamic data.</param>
    public PhaseEngine(ThermodynamicDatabase database)
    {
        ArgumentNullException.ThrowIfNull(database);
        _database = database;
    }

    /// <summary>Lowest temperature of the data [K].</summary>
    internal double LowestKelvin => _database.LowestKelvin;

    /// <summary>Equilibrium of a composition at a temperature.</summary>
    /// <param name="alloy">The composition; mole fractions under 1e-9 are left out.</param>
    /// <param name="temperature">298.15 K to 1700 K.</param>
    /// <returns>The equilibrium with its certificate, or why there is none.</returns>
    public EquilibriumOutcome EquilibriumAt(MassFractions alloy, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(alloy);
        double kelvin = temperature.Kelvins;
        if (!(kelvin >= _database.LowestKelvin && kelvin <= _database.HighestKelvin))
        {
            return new EquilibriumOutcome.OutsideRange(RangeSentence(kelvin));
        }

        if (Refusal(alloy) is { } problem)
        {
            return new EquilibriumOutcome.OutsideRange(problem);
        }

        (EquilibriumKernel kernel, double[] overall) = Prepare(alloy);
        if (kernel.Global.Find(overall, kelvin, out double depth) is not { } found)
        {
            return new EquilibriumOutcome.NotConverged(string.Create(CultureInfo.InvariantCulture, $"no certified equilibrium of {alloy} was found at {kelvin - 273.15:0.0} °C"));
        }

        MassBasis mass = new(kernel, overall);
        return new EquilibriumOutcome.Converged(new EquilibriumState(
            temperature,
            mass.Shares(found),
            mass.LiquidMassFraction(found),
            SpecificEnergy.FromJoulesPerKilogram(mass.JoulePerKilogram(found)),
            MolarEnergy.FromJoulesPerMole(depth)));
    }

    /// <summary>Melting behaviour of an alloy in equilibrium.</summary>
    /// <param name="alloy">The composition; mole fractions under 1e-9 are left out.</param>
    /// <returns>Solidus, liquidus, flow temperature, melt curve and caveats, or why there are none.</returns>
    public MeltingOutcome MeltingOf(MassFractions alloy)
    {
        ArgumentNullException.ThrowIfNull(alloy);
        if (Refusal(alloy) is { } problem)
        {
            return new MeltingOutcome.OutsideModel(problem);
        }

        (EquilibriumKernel kernel, double[] overall) = Prepare(alloy);
        CoolingPath path = new(kernel, overall);
        if (path.Follow(_database.LowestKelvin) is { } failure)
        {
            return new MeltingOutcome.NotConverged($"melting of {alloy} was not found: {failure}");
        }

        if (ModelSupport.Barrier(_database, alloy) is { } barrier)
        {
            return new MeltingOutcome.SolidusOnly(
                Temperature.FromKelvins(path.States[^1].Kelvin),
                TemperatureDelta.FromKelvins(ModelSupport.UncertaintyKelvin(_database, alloy)),
                ModelSupport.Caveats(_database, alloy),
                barrier.Caveat);
        }

        MeltCurveBuilder builder = new(kernel, overall, path.States);
        double flow = builder.KelvinAtLiquidFraction(MeltingBehaviour.FlowLiquidFraction);
        double rise = Math.Min(ModelSupport.SolidusRiseKelvin(_database, alloy), flow - path.States[^1].Kelvin);
        return new MeltingOutcome.Found(new MeltingBehaviour(
            alloy,
            Temperature.FromKelvins(path.States[^1].Kelvin),
            Temperature.FromKelvins(builder.LiquidusKelvin()),
            Temperature.FromKelvins(flow),
            TemperatureDelta.FromKelvins(ModelSupport.UncertaintyKelvin(_database, alloy)),
            TemperatureDelta.FromKelvins(Math.Max(0, rise)),
            builder.Build(),
            SpecificEnergy.FromJoulesPerKilogram(builder.LatentJoulePerKilogram()),
            ModelSupport.Caveats(_database, alloy)));
    }

    /// <summary>Solidification without diffusion in the solid, as on real cooling.</summary>
    /// <param name="alloy">The composition; mole fractions under 1e-9 are left out.</param>
    /// <returns>The path, or why there is none.</returns>
    public ScheilOutcome SolidifyWithoutDiffusion(MassFractions alloy)
    {
        ArgumentNullException.ThrowIfNull(alloy);
        if ((TraceProblem(alloy) ?? ModelSupport.Barrier(_database, alloy)?.Caveat) is { } problem)
        {
            return new ScheilOutcome.OutsideModel(problem);
        }

        (EquilibriumKernel kernel, double[] overall) = Prepare(alloy);
        ScheilWalk walk = new(kernel, overall);
        if (walk.Follow(_database.LowestKelvin, ScheilPath.NegligibleLiquid) is { } failure)
        {
            return new ScheilOutcome.NotConverged($"solidification of {alloy} was not followed to its end: {failure}");
        }

        MassBasis mass = new(kernel, overall);
        return new ScheilOutcome.Found(new ScheilPath(
            [.. walk.Path.Select(p => p.Kelvin)],
            [.. walk.Path.Select(p => p.Liquid)],
            mass.Shares(walk.Solids),
            mass.Composition(walk.LastLiquid),
            TemperatureDelta.FromKelvins(ModelSupport.UncertaintyKelvin(_database, alloy)),
            ModelSupport.Caveats(_database, alloy)));
    }

    /// <summary>
    /// Share of the mass that is still liquid on cooling to a temperature without diffusion in the solid; the path is followed no
    /// further than that, which is quicker than <see cref="SolidifyWithoutDiffusion"/>.
    /// </summary>
    /// <param name="alloy">The composition; mole fractions under 1e-9 are left out.</param>
    /// <param name="temperature">Where to look.</param>
    /// <param name="liquidPerStep">Share of the liquid that may freeze in one step, above 0 and below 1: larger is quicker and less exact.</param>
    /// <returns>The share, 0 to 1; null when the path could not be followed.</returns>
    internal double? LiquidLeftAt(MassFractions alloy, Temperature temperature, double liquidPerStep = ScheilWalk.UsualLiquidPerStep)
    {
        if (Refusal(alloy) is not null)
        {
            return null;
        }

        (EquilibriumKernel kernel, double[] overall) = Prepare(alloy);
        ScheilWalk walk = new(kernel, overall, liquidPerStep);
        return walk.Follow(Math.Max(temperature.Kelvins, _database.LowestKelvin), ScheilPath.NegligibleLiquid) is null
            ? ScheilPath.LiquidAt(walk.Path, temperature.Kelvins)
            : null;
    }

    /// <summary>
    /// Copper that a molten solder can hold before a copper-tin compound forms; the other elements keep their ratio. Below the
    /// solder's liquidus the answer is the metastable continuation.
    /// </summary>
    /// <param name="solder">The solder; copper already in it is left aside.</param>
    /// <param name="temperature">298.15 K to 1700 K.</param>
    /// <returns>The solubility, or why there is none.</returns>
    public SolubilityOutcome CopperSolubility(MassFractions solder, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(solder);
        if (!(temperature.Kelvins >= _database.LowestKelvin && temperature.Kelvins <= _database.HighestKelvin))
        {
            return new SolubilityOutcome.OutsideRange(RangeSentence(temperature.Kelvins));
        }

        if (!(solder[Element.Sn] > 0))
        {
            return new SolubilityOutcome.NoCompound($"{solder} holds no tin, so no copper-tin compound limits the copper in it");
        }

        double[] masses = solder.ToArray();
        masses[(int)Element.Cu] = 0;
        MassFractions bare = MassFractions.FromMasses(masses);
        if (Refusal(bare.MixedWith(MassFractions.Of((Element.Cu, 1)), TypicalCopper)) is { } problem)
        {
            return new SolubilityOutcome.OutsideRange(problem);
        }

        MoleFractions others = bare.ToMoleFractions();
        Element[] elements = [.. ElementData.All.Where(e => others[e] >= Absent || e == Element.Cu)];
        ReducedSystem system = SystemOf(elements);
        double[] shares = Scaled([.. elements.Select(e => others[e])]);
        CopperSaturation saturation = new(new EquilibriumKernel(system), shares, Array.IndexOf(elements, Element.Cu));
        if (saturation.At(temperature.Kelvins) is not (double copper, PhaseModel compound))
        {
            return new SolubilityOutcome.NoCompound(string.Create(CultureInfo.InvariantCulture, $"no copper-tin compound forms in {solder} at {temperature.DegreesCelsius:0.#} °C"));
        }

        double[] saturated = [.. elements.Select((e, i) => (e == Element.Cu ? copper : (1 - copper) * shares[i]) * e.GramsPerMole())];
        double fraction = copper * Element.Cu.GramsPerMole() / saturated.Sum();
        return new SolubilityOutcome.Found(fraction, _database.Phases[compound.Description].ShownAs, temperature, ModelSupport.Caveats(_database, solder));
    }

    internal (EquilibriumKernel Kernel, double[] Overall) Prepare(MassFractions alloy)
    {
        MoleFractions moles = alloy.ToMoleFractions();
        Element[] elements = [.. ElementData.All.Where(e => moles[e] >= Absent)];
        return (new EquilibriumKernel(SystemOf(elements)), Scaled([.. elements.Select(e => moles[e])]));
    }

    private ReducedSystem SystemOf(Element[] elements) =>
        _systems.GetOrAdd(elements.Aggregate(0, (mask, e) => mask | (1 << (int)e)), _ => ReducedSystem.Of(_database, elements));

    private static double[] Scaled(double[] amounts)
    {
        double sum = amounts.Sum();
        return [.. amounts.Select(a => a / sum)];
    }

    private string RangeSentence(double kelvin) => string.Create(
        CultureInfo.InvariantCulture,
        $"{kelvin - 273.15:0.#} °C is outside the range of the data, {_database.LowestKelvin - 273.15:0} to {_database.HighestKelvin - 273.15:0} °C");

    /// <summary>Why nothing can be said of an alloy; null when something can.</summary>
    private string? Refusal(MassFractions alloy) =>
        TraceProblem(alloy) ?? (ModelSupport.Barrier(_database, alloy) is { Answer: LimitedAnswer.None } barrier ? barrier.Caveat : null);

    private static string? TraceProblem(MassFractions alloy)
    {
        double others = alloy.InertTrace - alloy.Nickel;
        return others > MostInertTrace + Rounding
            ? string.Create(CultureInfo.InvariantCulture, $"{others * 100:0.###} % of unmodelled elements is more than the {MostInertTrace * 100:0.##} % that may be carried along")
            : alloy.Nickel > MostNickel + Rounding
                ? string.Create(CultureInfo.InvariantCulture, $"{alloy.Nickel * 100:0.###} % of nickel is more than the {MostNickel * 100:0.##} % that may be carried along")
                : null;
    }
}
