namespace ReworkThermal.Core.Phases.Solving;

/// <summary>Phases in equilibrium with each other at one temperature.</summary>
internal sealed class Assemblage
{
    internal Assemblage(double kelvin, IEnumerable<PhaseState> phases, double[] potentials)
    {
        Kelvin = kelvin;
        Phases = [.. phases];
        Potentials = potentials;
    }

    /// <summary>Temperature [K].</summary>
    internal double Kelvin { get; set; }

    internal List<PhaseState> Phases { get; }

    /// <summary>Chemical potentials / R T, one per element.</summary>
    internal double[] Potentials { get; }

    /// <summary>Moles of atoms in liquid.</summary>
    internal double LiquidAmount
    {
        get
        {
            double sum = 0;
            foreach (PhaseState phase in Phases)
            {
                sum += phase.Model.IsLiquid ? phase.Amount : 0;
            }

            return sum;
        }
    }

    internal Assemblage Copy() => new(Kelvin, Phases.Select(p => p.Copy()), (double[])Potentials.Clone());
}
