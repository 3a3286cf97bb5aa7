using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>Turns assemblages per mole of atoms into shares of mass and enthalpy per kilogram.</summary>
internal sealed class MassBasis
{
    private readonly EquilibriumKernel _kernel;
    private readonly double[] _gramsPerMole;
    private readonly double _meanGramsPerMole;

    internal MassBasis(EquilibriumKernel kernel, double[] overall)
    {
        _kernel = kernel;
        _gramsPerMole = [.. kernel.System.Elements.Select(e => e.GramsPerMole())];
        _meanGramsPerMole = Grams(overall);
    }

    /// <summary>Mass fraction of one phase of an assemblage.</summary>
    internal double MassFraction(PhaseState phase) => phase.Amount * Grams(phase.X) / _meanGramsPerMole;

    /// <summary>Mass fraction of liquid.</summary>
    internal double LiquidMassFraction(Assemblage assemblage) => Math.Clamp(assemblage.Phases.Where(p => p.Model.IsLiquid).Sum(MassFraction), 0, 1);

    /// <summary>Enthalpy of an assemblage at its temperature [J/kg].</summary>
    internal double JoulePerKilogram(Assemblage assemblage) => JoulePerKilogram(assemblage.Phases, assemblage.Kelvin);

    /// <summary>Enthalpy of phases of given amount and composition at any temperature [J/kg].</summary>
    internal double JoulePerKilogram(IEnumerable<PhaseState> phases, double kelvin)
    {
        _kernel.Surfaces.SetTemperature(kelvin);
        double sum = 0;
        double[] gradient = new double[TangentPlane.MostVariables];
        foreach (PhaseState phase in phases)
        {
            Span<double> used = gradient.AsSpan(0, phase.Model.Variables);
            double g = _kernel.Surfaces.Evaluate(phase.Model, phase.Y, used, []);
            sum += phase.Amount * (g - _kernel.Surfaces.EvaluateSlope(phase.Model, phase.Y, used));
        }

        return sum * _kernel.Surfaces.ThermalEnergy / _meanGramsPerMole * 1000;
    }

    /// <summary>Phases with their shares, the liquid first, then by falling share.</summary>
    internal IReadOnlyList<PhaseShare> Shares(Assemblage assemblage) =>
        [.. assemblage.Phases
            .Where(p => p.Amount > 0)
            .OrderByDescending(p => p.Model.IsLiquid ? 2 : MassFraction(p))
            .Select(Share)];

    /// <summary>Composition of a phase by mass.</summary>
    internal MassFractions Composition(PhaseState phase) => Composition(phase.X);

    /// <summary>Composition by mass from moles of each element of the system.</summary>
    internal MassFractions Composition(double[] moles)
    {
        double[] masses = new double[ElementData.Count];
        for (int e = 0; e < moles.Length; e++)
        {
            masses[(int)_kernel.System.Elements[e]] = moles[e] * _gramsPerMole[e];
        }

        return MassFractions.FromMasses(masses);
    }

    /// <summary>Solids given by the moles of each element in them (index of the model), of one mole of atoms in all; by falling share.</summary>
    internal IReadOnlyList<PhaseShare> Shares(IReadOnlyDictionary<int, double[]> solids)
    {
        List<PhaseShare> shares = [];
        foreach ((int model, double[] moles) in solids)
        {
            double grams = Grams(moles);
            if (grams > 0)
            {
                PhaseDescription description = _kernel.System.Database.Phases[_kernel.System.Models[model].Description];
                shares.Add(new PhaseShare(description.Name, description.ShownAs, grams / _meanGramsPerMole, Composition(moles)));
            }
        }

        return [.. shares.OrderByDescending(s => s.MassFraction)];
    }

    private PhaseShare Share(PhaseState phase)
    {
        PhaseDescription description = _kernel.System.Database.Phases[phase.Model.Description];
        return new PhaseShare(description.Name, description.ShownAs, MassFraction(phase), Composition(phase));
    }

    private double Grams(double[] moles)
    {
        double sum = 0;
        for (int e = 0; e < moles.Length; e++)
        {
            sum += moles[e] * _gramsPerMole[e];
        }

        return sum;
    }
}
