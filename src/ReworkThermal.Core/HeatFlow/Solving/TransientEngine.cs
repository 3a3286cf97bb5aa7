namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>
/// Marches a thermal system through time with TR-BDF2: trapezoidal rule to an inner point, then the second backward difference;
/// second order, L-stable (nothing rings at a melting front or at the start of a touch), one matrix for both stages.
/// </summary>
/// <remarks>
/// Method: Bank et al., IEEE Trans. Electron Devices 32 (1985) 1992; error constant and embedded estimate: Hosea and Shampine,
/// Applied Numerical Mathematics 20 (1996) 21-37. The local error is estimated from the third divided difference of temperature over
/// the last step, the inner point and the new point; on a first step, from the embedded formula filtered by the stage matrix.
/// Step lengths come from a ladder of powers of two, so that the factored matrix serves many steps.
/// </remarks>
internal sealed class TransientEngine
{
    internal const double Gamma = 2 - Sqrt2;
    private const double StageWeight = Sqrt2 / 4;
    internal const double EndWeight = 1 - (Sqrt2 / 2);
    private const double Sqrt2 = 1.4142135623730951;
    private const double SafetyFactor = 0.9;
    private const double ShortestStepS = 1e-10;

    private readonly ThermalSystem _system;
    private readonly ImplicitSolver _solver;
    private readonly StepControl _control;
    private readonly IStageObserver? _observer;
    private readonly double[] _known;
    private readonly double[] _bodyKnown;
    private readonly double[] _watts0 = new double[HeatLedger.MostChannels];
    private readonly double[] _wattsInner = new double[HeatLedger.MostChannels];
    private readonly int _filled;
    private StageState _before;
    private StageState _now;
    private readonly StageState _inner;
    private StageState _next;
    private int _level;
    private bool _hasHistory;
    private double _lastStep;

    internal TransientEngine(ThermalSystem system, StepControl control, IStageObserver? observer)
    {
        _system = system;
        _solver = new ImplicitSolver(system);
        _control = control;
        _observer = observer;
        int length = system.Matrix.VectorLength;
        _known = new double[length];
        _bodyKnown = new double[system.Bodies.Length];
        _before = new StageState(length, system.Bodies.Length);
        _now = new StageState(length, system.Bodies.Length);
        _inner = new StageState(length, system.Bodies.Length);
        _next = new StageState(length, system.Bodies.Length);
        for (int p = 0; p < system.Grid.Count; p++)
        {
            _filled += system.Grid.MaterialAt(p) is null ? 0 : 1;
        }
    }

    /// <summary>Time reached [s].</summary>
    internal double TimeS { get; private set; }

    /// <summary>Steps taken.</summary>
    internal int Steps { get; private set; }

    /// <summary>Steps thrown away, because their error was too large or because a stage could not be solved.</summary>
    internal int Rejections { get; private set; }

    /// <summary>Steps thrown away because a stage could not be solved; a shorter one was tried instead.</summary>
    internal int Unsolved { get; private set; }

    /// <summary>Why a stage could not be solved, the last time; <see cref="StageOutcome.Solved"/> when that never happened.</summary>
    internal StageOutcome LastFailure { get; private set; }

    /// <summary>Counts of the linear algebra.</summary>
    internal ImplicitSolver Solver => _solver;

    /// <summary>Where the heat came from.</summary>
    internal HeatLedger Ledger { get; } = new();

    /// <summary>Temperatures of the lumped bodies [K].</summary>
    internal ReadOnlySpan<double> BodyTemperaturesK => _now.BodyK;

    /// <summary>Starts from temperatures.</summary>
    /// <param name="cellK">Temperature of a cell by its position in the vectors [K].</param>
    internal void Start(Func<int, double> cellK)
    {
        StartQuietly(cellK);
        Record();
    }

    /// <summary>Starts from temperatures without keeping a sample yet.</summary>
    internal void StartQuietly(Func<int, double> cellK)
    {
        ConductionNetwork network = _system.Network;
        for (int p = 0; p < _system.Grid.Count; p++)
        {
            network.TemperatureK[network.Lead + p] = cellK(p);
        }

        network.EnthalpiesAt(_now.Enthalpy);
        for (int b = 0; b < _now.BodyK.Length; b++)
        {
            _now.BodyK[b] = _system.Bodies[b].TemperatureK;
        }

        _system.Surfaces.Reset(_system.CellTemperaturesK);
        Ledger.Start(HeldJ(_now));
        Restart(_control.FirstStepS);
    }

    /// <summary>Keeps a sample of the present state.</summary>
    internal void Record()
    {
        _observer?.Take(TimeS, _now.BodyK);
        _observer?.Commit();
    }

    /// <summary>Replaces the state by the one that does not change any more under the present boundary conditions.</summary>
    /// <returns>Whether it was found.</returns>
    internal bool Settle()
    {
        bool found = _solver.SolveSteady(TimeS, _now.Enthalpy, _now.BodyK, 1e-6);
        Ledger.Start(HeldJ(_now));
        Restart(_control.FirstStepS);
        return found;
    }

    /// <summary>Tells that boundary conditions changed at the present time: starts with a short step and without history.</summary>
    internal void Restart(double firstStepS)
    {
        _level = StepControl.LevelFor(firstStepS);
        _hasHistory = false;
        _solver.BoundariesChanged();
        _system.Evaluate(TimeS, _now.Enthalpy, _now.BodyK, _solver.Rates, _solver.BodyRates, _solver.ChannelWatts);
        Keep(_now);
        _solver.ChannelWatts.AsSpan().CopyTo(_watts0);
    }

    /// <summary>Marches to a time.</summary>
    /// <param name="endS">Time to reach [s].</param>
    /// <param name="cancellation">Stops the march between steps.</param>
    /// <returns>Whether it got there; false when no step however short converges.</returns>
    /// <exception cref="OperationCanceledException">The march was cancelled.</exception>
    internal bool AdvanceTo(double endS, CancellationToken cancellation)
    {
        while (endS - TimeS > 1e-12 * Math.Max(1, endS))
        {
            cancellation.ThrowIfCancellationRequested();
            double left = endS - TimeS;
            double step = Math.Min(StepControl.StepAt(_level), _control.LongestStepS);
            step = step >= left * (1 - 1e-9) ? left : step > left / 2 ? left / 2 : step;
            double error = TryStep(step);
            if (error <= 1)
            {
                Accept(step, error);
                continue;
            }

            Rejections++;
            _observer?.Discard();
            double factor = double.IsFinite(error) ? Math.Max(0.1, SafetyFactor * Math.Pow(error, -1.0 / 3)) : 0.25;
            _level = Math.Min(StepControl.LevelFor(step) - 1, StepControl.LevelFor(step * factor));
            if (step < ShortestStepS)
            {
                return false;
            }
        }

        return true;
    }

    // Error of the step over its tolerance; infinite when a stage did not converge.
    private double TryStep(double step)
    {
        double a = EndWeight * step;
        double tolerance = _control.NewtonToleranceK;
        int cells = _system.Grid.Count;
        double reach = _hasHistory ? Gamma * step / _lastStep : 0;
        for (int p = 0; p < cells; p++)
        {
            double held = _now.Enthalpy[p];
            _known[p] = held + (a * _now.Rates[p]);
            _inner.Enthalpy[p] = held + (reach * (held - _before.Enthalpy[p]));
        }

        for (int b = 0; b < _bodyKnown.Length; b++)
        {
            _bodyKnown[b] = (_system.Bodies[b].HeatCapacity * _now.BodyK[b]) + (a * _now.BodyRates[b]);
            _inner.BodyK[b] = _now.BodyK[b];
        }

        if (!IsSolved(_solver.Solve(a, TimeS + (Gamma * step), _known, _bodyKnown, _inner.Enthalpy, _inner.BodyK, tolerance)))
        {
            return double.PositiveInfinity;
        }

        Keep(_inner);
        _solver.ChannelWatts.AsSpan().CopyTo(_wattsInner);
        _observer?.Take(TimeS + (Gamma * step), _inner.BodyK);
        double weight = StageWeight * step;
        for (int p = 0; p < cells; p++)
        {
            double held = _now.Enthalpy[p];
            _known[p] = held + (weight * (_now.Rates[p] + _inner.Rates[p]));
            _next.Enthalpy[p] = held + ((_inner.Enthalpy[p] - held) / Gamma);
        }

        for (int b = 0; b < _bodyKnown.Length; b++)
        {
            _bodyKnown[b] = (_system.Bodies[b].HeatCapacity * _now.BodyK[b]) + (weight * (_now.BodyRates[b] + _inner.BodyRates[b]));
            _next.BodyK[b] = _now.BodyK[b] + ((_inner.BodyK[b] - _now.BodyK[b]) / Gamma);
        }

        if (!IsSolved(_solver.Solve(a, TimeS + step, _known, _bodyKnown, _next.Enthalpy, _next.BodyK, tolerance)))
        {
            return double.PositiveInfinity;
        }

        Keep(_next);
        _observer?.Take(TimeS + step, _next.BodyK);
        double error = _hasHistory
            ? StepError.FromDifferences(_before, _now, _inner, _next, _lastStep, step, cells, _filled)
            : StepError.Embedded(_now, _inner, _next, cells, _filled, _known, _solver);
        return error / _control.ToleranceK;
    }

    private bool IsSolved(StageOutcome outcome)
    {
        if (outcome is StageOutcome.Solved)
        {
            return true;
        }

        LastFailure = outcome;
        Unsolved++;
        return false;
    }

    private void Accept(double step, double error)
    {
        TimeS += step;
        Steps++;
        Ledger.Book(step, StageWeight, EndWeight, _watts0, _wattsInner, _solver.ChannelWatts, HeldJ(_next));
        _solver.ChannelWatts.AsSpan().CopyTo(_watts0);
        _observer?.Commit();
        _system.Surfaces.Tool.Look(TimeS, _next.CellK);
        (_before, _now, _next) = (_now, _next, _before);
        double factor = SafetyFactor * Math.Pow(Math.Max(error, 1e-9), -1.0 / 3);
        int most = _hasHistory ? 1 : 2;
        int rise = (int)Math.Floor(Math.Log2(factor));
        int level = StepControl.LevelFor(step);
        bool clipped = step < 0.999 * StepControl.StepAt(_level);
        _level = rise >= 1 ? Math.Max(clipped ? _level : int.MinValue, level + Math.Min(rise, most))
            : clipped ? _level : level;
        _level = Math.Min(_level, StepControl.LevelFor(_control.LongestStepS) + 1);
        _lastStep = step;
        _hasHistory = true;
    }

    private void Keep(StageState state)
    {
        _solver.Rates.AsSpan().CopyTo(state.Rates);
        _solver.BodyRates.AsSpan().CopyTo(state.BodyRates);
        _system.CellTemperaturesK.CopyTo(state.CellK);
    }

    private double HeldJ(StageState state)
    {
        double sum = 0;
        for (int p = 0; p < _system.Grid.Count; p++)
        {
            sum += state.Enthalpy[p];
        }

        for (int b = 0; b < state.BodyK.Length; b++)
        {
            sum += _system.Bodies[b].HeatCapacity * state.BodyK[b];
        }

        return sum;
    }
}
