namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// Equilibria of one overall composition from the liquidus down to the end of freezing, every phase change met exactly. States come
/// in order of falling temperature; two at one temperature are the two sides of a reaction.
/// </summary>
internal sealed class CoolingPath
{
    private const double FirstStepKelvin = 2;
    private const double LargestStepKelvin = 15;
    private const double SmallestStepKelvin = 1e-5;
    private const double LiquidPerStep = 0.1;
    private const double TopKelvin = 1690;
    private const int MostSteps = 800;

    private readonly EquilibriumKernel _kernel;
    private readonly double[] _overall;
    private readonly BasinSet _basins;
    private readonly CoolingStep _step;
    private readonly List<Assemblage> _states = [];
    private readonly List<Formation> _formations = [];

    internal CoolingPath(EquilibriumKernel kernel, double[] overall)
    {
        _kernel = kernel;
        _overall = overall;
        _basins = new BasinSet(kernel);
        _step = new CoolingStep(kernel, overall, _basins);
    }

    /// <summary>States from the liquidus (or from the top, where the liquid is immiscible) to the solidus.</summary>
    internal IReadOnlyList<Assemblage> States => _states;

    /// <summary>Every point at which a phase forms, in order of falling temperature.</summary>
    internal IReadOnlyList<Formation> Formations => _formations;

    /// <summary>Follows the path.</summary>
    /// <param name="lowestKelvin">Temperature at which to give up.</param>
    /// <returns>Null when all is well; otherwise why not, as a clause.</returns>
    internal string? Follow(double lowestKelvin)
    {
        if (Begin() is { } problem)
        {
            return problem;
        }

        double step = FirstStepKelvin;
        for (int count = 0; count < MostSteps; count++)
        {
            Assemblage current = _states[^1];
            if (current.LiquidAmount <= 0)
            {
                return null;
            }

            if (current.Kelvin <= lowestKelvin)
            {
                return "liquid is left at the lowest temperature of the data";
            }

            double target = Math.Max(current.Kelvin - step, lowestKelvin);
            switch (_step.Take(current, target))
            {
                case CoolingStepOutcome.Reached(Assemblage state)
                    when current.LiquidAmount - state.LiquidAmount > LiquidPerStep && step > 0.05:
                    step *= 0.4;
                    break;
                case CoolingStepOutcome.Reached(Assemblage state):
                    _states.Add(state);
                    step = Math.Min(step * 1.7, LargestStepKelvin);
                    break;
                case CoolingStepOutcome.Changed(Assemblage before, Assemblage after, var joining):
                    Add(before, after, joining);
                    _basins.Renew(after.Kelvin, after.Potentials, 1);
                    step = Math.Min(step, FirstStepKelvin);
                    break;
                default:
                    step *= 0.25;
                    if (step < SmallestStepKelvin)
                    {
                        if (!TryRestart(current))
                        {
                            return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"no equilibrium was found just below {current.Kelvin - 273.15:0.0} °C");
                        }

                        step = FirstStepKelvin;
                    }

                    break;
            }
        }

        return "the path took too many steps";
    }

    private string? Begin()
    {
        LiquidusSearch liquidus = new(_kernel);
        if (liquidus.Find(_overall, _basins) is not { } first)
        {
            return "the liquidus search did not converge";
        }

        if (_basins.Deepest(1e-8) is null)
        {
            PhaseState solid = first.Phases[^1];
            first.Phases.RemoveAt(1);
            Add(first, Reaction.Join(first, solid), solid);
            return null;
        }

        // The liquid itself is not stable there: start from the top, where it is.
        Assemblage top = liquidus.Liquid(_overall, TopKelvin);
        _basins.Renew(TopKelvin, top.Potentials);
        if (_basins.Deepest(1e-8) is not null)
        {
            return "the liquid is not one phase at the highest temperature of the data";
        }

        _states.Add(top);
        return null;
    }

    private void Add(Assemblage before, Assemblage after, PhaseState? joining)
    {
        if (joining is not null)
        {
            _formations.Add(new Formation(before, joining));
        }

        _states.Add(before);
        _states.Add(after);
    }

    /// <summary>Finds the equilibrium a little lower without a guess, for the rare cases in which a change of phases is not resolved.</summary>
    private bool TryRestart(Assemblage current)
    {
        foreach (double drop in (ReadOnlySpan<double>)[1e-4, 1e-2, 0.3, 2])
        {
            double kelvin = current.Kelvin - drop;
            if (_kernel.Global.Find(_overall, kelvin, out _) is { } found)
            {
                _basins.Renew(kelvin, found.Potentials);
                if (_step.Take(found, kelvin - 1e-3) is not CoolingStepOutcome.Failed)
                {
                    _states.Add(found);
                    return true;
                }
            }
        }

        return false;
    }
}
