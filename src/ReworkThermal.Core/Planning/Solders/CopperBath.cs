using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Solders;

/// <summary>What molten solder does to the copper of barrel and pad, with the solubility from the phase engine.</summary>
internal static class CopperBath
{
    private const double StepK = 20;

    // Solder gets no hotter than what touches it, and shipped irons are set to 450 °C at the most. For an own iron or hot air beyond
    // that, the last two samples are continued.
    private const double HottestC = 450;

    // Nickel-doped solders hold 0.02 to 0.1 % by design (common practice, no source); less is a trace from the pot.
    private const double LeastNickel = 0.0002;

    /// <summary>The solder of one touch on a joint; null when it forms no compound with copper that could saturate it.</summary>
    internal static MoltenContact? Of(PhaseEngine engine, SolderProperties properties, Joint joint, MassFractions solder, Temperature flow, double freshCopper) =>
        Solubility(engine, solder, flow) is { } solubility
            ? new MoltenContact(solubility, flow, properties.MeltDensity(solder, flow), VolumeToArea(joint), freshCopper, SolderMotion.Still, HoldsNickel(solder))
            : null;

    /// <summary>Whether a solder holds enough nickel to slow the loss of copper.</summary>
    internal static bool HoldsNickel(MassFractions solder) => solder.Nickel >= LeastNickel;

    /// <summary>Copper in the saturated liquid, sampled from the flow temperature upwards; null when too few samples have an answer.</summary>
    internal static TabulatedSolubility? Solubility(PhaseEngine engine, MassFractions solder, Temperature flow)
    {
        List<double> celsius = [];
        List<double> saturation = [];
        for (double t = Math.Max(flow.DegreesCelsius, 150); t < HottestC + StepK; t += StepK)
        {
            if (engine.CopperSolubility(solder, Temperature.FromDegreesCelsius(t)) is SolubilityOutcome.Found found)
            {
                celsius.Add(t);
                saturation.Add(found.CopperMassFraction);
            }
        }

        return celsius.Count < 2 ? null : new TabulatedSolubility([.. celsius], [.. saturation]);
    }

    /// <summary>Solder per copper area: of the filled hole, or of the layer on a land.</summary>
    internal static Length VolumeToArea(Joint joint) => joint switch
    {
        ThroughJoint through => MoltenContact.VolumeToAreaOfHole(through.BarrelInnerDiameter, through.Leg?.Shape.EquivalentDiameter ?? Length.Zero),
        SurfaceJoint surface => surface.SolderThickness,
        _ => throw new InvalidOperationException("unknown kind of joint"),
    };
}
