using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>What molten solder does to the copper of barrel and pad, with the solubility from the phase engine.</summary>
internal static class CopperBath
{
    private const double StepK = 20;
    private const double HottestC = 360;

    /// <summary>The bath of one touch; null when the solder forms no compound with copper that could saturate it.</summary>
    internal static MoltenContact? Of(PhaseEngine engine, Workload work, MassFractions solder, Temperature flow, double freshCopper)
    {
        List<double> celsius = [];
        List<double> saturation = [];
        for (double t = Math.Max(flow.DegreesCelsius, 150); t <= HottestC; t += StepK)
        {
            if (engine.CopperSolubility(solder, Temperature.FromDegreesCelsius(t)) is SolubilityOutcome.Found found)
            {
                celsius.Add(t);
                saturation.Add(found.CopperMassFraction);
            }
        }

        return celsius.Count < 2
            ? null
            : new MoltenContact(
                new TabulatedSolubility([.. celsius], [.. saturation]),
                flow,
                work.Properties.MeltDensity(solder, flow),
                MoltenContact.VolumeToAreaOfHole(work.Joint.BarrelInnerDiameter, work.Joint.Leg?.Shape.EquivalentDiameter ?? Length.Zero),
                freshCopper,
                SolderMotion.Still);
    }
}
