namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// Solidification without diffusion in the solid: small steps of equilibrium freezing of the liquid that is left, each step's
/// solid being set aside. A phase that equilibrium would dissolve again is inert here.
/// </summary>
internal sealed class ScheilWalk
{
    /// <summary>Share of the liquid that freezes in one step, unless a quicker answer is wanted.</summary>
    internal const double UsualLiquidPerStep = 0.02;

    private const double FirstStepKelvin = 0.5;
    private const double LargestStepKelvin = 8;
    private const double SmallestStepKelvin = 1e-6;
    private const int MostSteps = 6000;

    /// <summary>
    /// An element that the solids take up is kept at this mole fraction in the liquid: without a floor it sinks to 1e-30, where no
    /// equations can be solved, and at the floor it changes nothing else by more than rounding.
    /// </summary>
    private const double LeastFraction = 1e-10;

    /// <summary>
    /// So many changes of phases at one temperature mean that a phase comes and goes: what forms dissolves another that is set aside
    /// already. The equilibrium a hair lower decides.
    /// </summary>
    private const int MostChangesInPlace = 8;
    private const double InPlaceKelvin = 1e-6;

    private readonly EquilibriumKernel _kernel;
    private readonly double[] _overall;
    private readonly double _liquidPerStep;
    private readonly double[] _liquid;
    private readonly BasinSet _basins;
    private readonly CoolingStep _step;
    private readonly List<(double Kelvin, double Liquid)> _path = [];
    private readonly Dictionary<int, double[]> _solids = [];
    private Assemblage? _current;
    private double _stepKelvin = FirstStepKelvin;
    private double _remaining = 1;
    private int _changesInPlace;
    private int _restartsInARow;

    internal ScheilWalk(EquilibriumKernel kernel, double[] overall, double liquidPerStep = UsualLiquidPerStep)
    {
        _liquidPerStep = liquidPerStep;
        _kernel = kernel;
        _overall = overall;
        _liquid = (double[])overall.Clone();
        _basins = new BasinSet(kernel);
        _step = new CoolingStep(kernel, _liquid, _basins);
    }

    /// <summary>Temperature [K] and mass fraction of liquid, falling.</summary>
    internal IReadOnlyList<(double Kelvin, double Liquid)> Path => _path;

    /// <summary>Moles of each element in each solid phase (index of the model).</summary>
    internal IReadOnlyDictionary<int, double[]> Solids => _solids;

    /// <summary>Mole fractions of the last liquid.</summary>
    internal double[] LastLiquid => _liquid;

    /// <summary>Follows the path until less than a share of the mass is liquid.</summary>
    /// <returns>Null when all is well; otherwise why not, as a clause.</returns>
    internal string? Follow(double lowestKelvin, double negligible)
    {
        switch (new LiquidusSearch(_kernel).Begin(_overall, _basins))
        {
            case PathStart.AtLiquidus(Assemblage liquid, PhaseState solid):
                Record(liquid.Kelvin);
                liquid.Phases.Add(solid);
                _current = Joined(liquid);
                break;
            case PathStart.AtTop(Assemblage liquid):
                Record(liquid.Kelvin);
                _current = liquid;
                break;
            case PathStart.Failed(string reason):
                return reason;
            default:
                throw new System.Diagnostics.UnreachableException();
        }

        for (int count = 0; count < MostSteps; count++)
        {
            if (_current is not { LiquidAmount: > 0 } current || _path[^1].Liquid <= negligible || current.Kelvin <= lowestKelvin)
            {
                return null;
            }

            Advance(current, _step.Take(current, Math.Max(current.Kelvin - _stepKelvin, lowestKelvin)));
            if (_stepKelvin >= SmallestStepKelvin && _changesInPlace <= MostChangesInPlace)
            {
                continue;
            }

            if (Restart(current) is not { } restarted)
            {
                return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"no equilibrium was found just below {current.Kelvin - 273.15:0.0} °C");
            }

            _current = restarted;
            _stepKelvin = FirstStepKelvin;
            _changesInPlace = 0;
        }

        return "the path took too many steps";
    }

    private void Advance(Assemblage current, CoolingStepOutcome outcome)
    {
        switch (outcome)
        {
            case CoolingStepOutcome.Reached(Assemblage state) when 1 - state.LiquidAmount > _liquidPerStep && _stepKelvin > SmallestStepKelvin:
                _stepKelvin *= Math.Max(0.2, 0.8 * _liquidPerStep / (1 - state.LiquidAmount));
                break;
            case CoolingStepOutcome.Reached(Assemblage state):
                _current = SetAside(state);
                _restartsInARow = _stepKelvin > SmallestStepKelvin * 100 ? 0 : _restartsInARow;
                _stepKelvin = Math.Min(_stepKelvin * 1.4, LargestStepKelvin);
                _changesInPlace = 0;
                break;
            case CoolingStepOutcome.Changed(Assemblage before, _, var joining) when 1 - before.LiquidAmount <= 2 * _liquidPerStep:
                _changesInPlace = current.Kelvin - before.Kelvin < InPlaceKelvin ? _changesInPlace + 1 : 0;
                Change(before, joining);
                break;
            case CoolingStepOutcome.Changed:
                _stepKelvin *= 0.5;
                break;
            default:
                _stepKelvin *= 0.3;
                break;
        }
    }

    private void Change(Assemblage before, PhaseState? joining)
    {
        Assemblage next = SetAside(before);
        if (joining is null)
        {
            next.Phases.RemoveAll(p => Vanished(before, p));
            _current = next;
        }
        else
        {
            joining.Amount = 0;
            next.Phases.Add(joining);
            _current = Joined(next);
        }

        if (_current is { } current)
        {
            _basins.Renew(current.Kelvin, current.Potentials, 1);
        }

        _stepKelvin = FirstStepKelvin;
    }

    /// <summary>Lets the last phase of an assemblage join; null when the liquid freezes completely in that reaction.</summary>
    private Assemblage? Joined(Assemblage current)
    {
        PhaseState joining = current.Phases[^1];
        Assemblage before = new(current.Kelvin, current.Phases.Take(current.Phases.Count - 1), current.Potentials);
        Assemblage after = Reaction.Join(before, joining);
        if (after.LiquidAmount > 1e-12)
        {
            return SetAside(after);
        }

        SetAside(after);
        return null;
    }

    /// <summary>Takes the solid out of the system and carries on with the liquid alone.</summary>
    private Assemblage SetAside(Assemblage state)
    {
        foreach (PhaseState phase in state.Phases)
        {
            if (phase.Model.IsLiquid)
            {
                continue;
            }

            if (!_solids.TryGetValue(phase.Model.Index, out double[]? moles))
            {
                moles = new double[_overall.Length];
                _solids[phase.Model.Index] = moles;
            }

            for (int e = 0; e < moles.Length; e++)
            {
                moles[e] += _remaining * Math.Max(0, phase.Amount) * phase.X[e];
            }
        }

        Assemblage next = state.Copy();
        double liquid = Math.Max(0, state.LiquidAmount);
        _remaining *= liquid;
        if (liquid > 0)
        {
            Array.Clear(_liquid);
            foreach (PhaseState phase in next.Phases)
            {
                for (int e = 0; e < _liquid.Length && phase.Model.IsLiquid; e++)
                {
                    _liquid[e] += phase.Amount / liquid * phase.X[e];
                }

                phase.Amount = phase.Model.IsLiquid ? phase.Amount / liquid : 0;
            }

            for (int e = 0; e < _liquid.Length; e++)
            {
                _liquid[e] = Math.Max(_liquid[e], LeastFraction);
            }
        }

        Record(state.Kelvin);
        return next;
    }

    private void Record(double kelvin)
    {
        double mass = 0;
        double total = 0;
        for (int e = 0; e < _overall.Length; e++)
        {
            double grams = Composition.ElementData.GramsPerMole(_kernel.System.Elements[e]);
            mass += _remaining * _liquid[e] * grams;
            total += _overall[e] * grams;
        }

        _path.Add((kelvin, mass / total));
    }

    private static bool Vanished(Assemblage before, PhaseState phase) =>
        before.Phases.Exists(p => p.Model == phase.Model && p.Amount <= 0 && SiteFractions.Distance(p.Y, phase.Y) == 0);

    /// <summary>
    /// Where the liquid freezes within less than the smallest step (a reaction that only traces keep from being at one temperature),
    /// the equilibrium a hair lower is taken as it is.
    /// </summary>
    private Assemblage? Restart(Assemblage current)
    {
        // Restarts in a row without a step between them go further each time.
        ReadOnlySpan<double> drops = [1e-5, 1e-3, 1e-2, 0.1, 0.5];
        foreach (double drop in drops[Math.Min(_restartsInARow++, drops.Length - 1)..])
        {
            if (_kernel.Global.Find(_liquid, current.Kelvin - drop, out _) is { } found)
            {
                _basins.Renew(found.Kelvin, found.Potentials, 1);
                return SetAside(found);
            }
        }

        return null;
    }
}
