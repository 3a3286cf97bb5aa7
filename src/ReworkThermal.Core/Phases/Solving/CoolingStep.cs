namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// Takes an equilibrium to a lower temperature. When a phase vanishes or forms on the way, the step ends exactly there: the
/// temperature at which the phase has no amount is solved for together with everything else.
/// </summary>
internal sealed class CoolingStep(EquilibriumKernel kernel, double[] overall, BasinSet basins)
{
    /// <summary>A phase this little under the plane does not form yet [R T]; 1e-5 J/mol at soldering temperatures.</summary>
    private const double FormTolerance = 3e-9;

    /// <summary>Amounts above minus this are zero within rounding [mol].</summary>
    private const double AmountTolerance = 1e-12;

    /// <summary>Step [K] small enough to believe that a phase without amount vanishes at once.</summary>
    private const double ImmediateKelvin = 1e-4;

    private const double SearchEveryKelvin = 10;
    private const int MostCorrections = 8;

    /// <summary>Steps down from an equilibrium.</summary>
    /// <param name="from">Equilibrium at the higher temperature.</param>
    /// <param name="target">Temperature to reach [K], lower.</param>
    internal CoolingStepOutcome Take(Assemblage from, double target)
    {
        Assemblage trial = from.Copy();
        trial.Kelvin = target;
        if (!kernel.Solver.TrySolve(trial, overall))
        {
            return new CoolingStepOutcome.Failed();
        }

        Look(trial);
        List<Basin> forming = [.. basins.All.Where(b => b.Height < -FormTolerance)];
        List<int> vanishing = [.. Enumerable.Range(0, trial.Phases.Count).Where(i => trial.Phases[i].Amount < -AmountTolerance)];
        if (forming.Count == 0 && vanishing.Count == 0)
        {
            return new CoolingStepOutcome.Reached(trial);
        }

        // A phase that has no amount yet may seem to vanish at once when the step jumps over its whole range: a smaller step tells.
        if (from.Kelvin - target > ImmediateKelvin && vanishing.Exists(i => from.Phases[i].Amount <= AmountTolerance))
        {
            return new CoolingStepOutcome.Failed();
        }

        Event? first = null;
        foreach (int index in vanishing)
        {
            Consider(ref first, SolveVanishing(from, trial, index, target));
        }

        foreach (Basin basin in forming)
        {
            Consider(ref first, SolveForming(from, trial, basin, target));
        }

        for (int correction = 0; first is not null && correction < MostCorrections; correction++)
        {
            basins.Follow(first.State.Kelvin, first.State.Potentials);
            if (basins.Deepest(FormTolerance) is not { } earlier)
            {
                break;
            }

            Event? better = SolveForming(from, first.State, earlier, target);
            if (better is null || better.State.Kelvin <= first.State.Kelvin)
            {
                return new CoolingStepOutcome.Failed();
            }

            first = better;
        }

        return first is null || !Sound(first) ? new CoolingStepOutcome.Failed() : Finish(first);
    }

    /// <summary>
    /// Brings the basins to a plane: as a rule by following them, every few kelvin afresh from every start, because a new minimum can
    /// open without a trace in those followed so far.
    /// </summary>
    private void Look(Assemblage trial)
    {
        if (basins.KelvinOfLastSearch - trial.Kelvin < SearchEveryKelvin)
        {
            basins.Follow(trial.Kelvin, trial.Potentials);
        }
        else
        {
            basins.Renew(trial.Kelvin, trial.Potentials, 1);
        }
    }

    private static CoolingStepOutcome Finish(Event change)
    {
        PhaseState actor = change.State.Phases[change.Actor];
        Assemblage before = change.State;
        if (change.Forms)
        {
            before.Phases.RemoveAt(change.Actor);
            return new CoolingStepOutcome.Changed(before, Reaction.Join(before, actor), actor);
        }

        Assemblage after = before.Copy();
        after.Phases.RemoveAt(change.Actor);
        return after.Phases.Count == 0 ? new CoolingStepOutcome.Failed() : new CoolingStepOutcome.Changed(before, after, null);
    }

    private static bool Sound(Event change) => change.State.Phases.TrueForAll(p => p.Amount >= -1e-9);

    private static void Consider(ref Event? first, Event? candidate)
    {
        if (candidate is not null && (first is null || candidate.State.Kelvin > first.State.Kelvin))
        {
            first = candidate;
        }
    }

    private Event? SolveVanishing(Assemblage from, Assemblage trial, int index, double target)
    {
        double start = from.Phases[index].Amount;
        double end = trial.Phases[index].Amount;
        double share = Math.Clamp(start / Math.Max(start - end, 1e-300), 0, 1);
        Assemblage guess = Blend(from, trial, share);
        guess.Phases[index].Amount = 0;
        return Solve(guess, index, false, from.Kelvin, target);
    }

    private Event? SolveForming(Assemblage from, Assemblage trial, Basin basin, double target)
    {
        double share = 0.5;
        kernel.Surfaces.SetTemperature(from.Kelvin);
        double above = kernel.Plane.HeightAt(basin.Model, basin.Y, from.Potentials);
        if (above > 0)
        {
            share = above / (above - basin.Height);
        }

        Assemblage guess = trial.Phases.Count == from.Phases.Count ? Blend(from, trial, share) : from.Copy();
        guess.Phases.Add(new PhaseState(basin.Model, basin.Y, 0));
        return Solve(guess, guess.Phases.Count - 1, true, from.Kelvin, target);
    }

    private Event? Solve(Assemblage guess, int actor, bool forms, double highest, double lowest)
    {
        double slack = 1e-7 * highest;
        if (!kernel.Solver.TrySolveTemperature(guess, overall, guess.Phases[actor], lowest - 50, highest + 50)
            || guess.Kelvin > highest + slack || guess.Kelvin < lowest - slack)
        {
            return null;
        }

        guess.Kelvin = Math.Min(guess.Kelvin, highest);
        PhaseState phase = guess.Phases[actor];
        bool twice = guess.Phases.Exists(p => !ReferenceEquals(p, phase) && p.Model == phase.Model && SiteFractions.Distance(p.Y, phase.Y) < 1e-5);
        return twice ? null : new Event(guess, actor, forms);
    }

    private static Assemblage Blend(Assemblage from, Assemblage to, double share)
    {
        Assemblage blend = from.Copy();
        blend.Kelvin = from.Kelvin + (share * (to.Kelvin - from.Kelvin));
        for (int p = 0; p < blend.Phases.Count; p++)
        {
            PhaseState phase = blend.Phases[p];
            phase.Amount += share * (to.Phases[p].Amount - phase.Amount);
            for (int v = 0; v < phase.Y.Length; v++)
            {
                phase.Y[v] = (phase.Y[v] * (1 - share)) + (to.Phases[p].Y[v] * share);
            }
        }

        return blend;
    }

    private sealed record Event(Assemblage State, int Actor, bool Forms);
}
