using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>
/// Solves one implicit stage: find enthalpies H with H - a F(H) = B, by Newton's method with enthalpies as unknowns.
/// </summary>
/// <remarks>
/// The matrix C/a + K is symmetric positive definite. It is factored afresh only when the step, the boundary conditions or a
/// melting slope changed, and then only its tail (the joint) unless the step changed. Linear cells are exact after one solve. Lumped
/// bodies border the band and are eliminated by their Schur complement. The residual over the heat capacity bounds the error in
/// temperature, because the matrix is an M-matrix with row sums of at least C/a; no extra solve is needed to stop.
/// </remarks>
internal sealed class ImplicitSolver
{
    private const int MostRounds = 40;
    private const double SlopeChange = 0.05;

    private readonly ThermalSystem _system;
    private readonly BandedCholesky _matrix;
    private readonly double[] _correction;
    private readonly double[] _bodyCorrection;
    private readonly double[][] _border;
    private readonly double[][] _reduced;
    private readonly double[,] _schur;
    private readonly double[,] _schurBase;
    private readonly double[] _inverseLeastHeat;
    private readonly int[] _empty;
    private readonly int _cells;
    private readonly double[] _heat;
    private readonly double[] _factoredHeat;
    private readonly double[] _diagonal;
    private double _factoredStep = double.NaN;
    private bool _boundariesChanged = true;

    internal ImplicitSolver(ThermalSystem system)
    {
        _system = system;
        _matrix = system.Matrix;
        int bodies = system.Bodies.Length;
        _correction = new double[_matrix.VectorLength];
        _bodyCorrection = new double[bodies];
        _border = [.. system.Bodies.Select(_ => new double[_matrix.VectorLength])];
        _reduced = [.. system.Bodies.Select(_ => new double[_matrix.VectorLength])];
        _schur = new double[bodies, bodies];
        _schurBase = new double[bodies, bodies];
        _cells = system.Grid.Count;
        _heat = new double[_matrix.VectorLength];
        _inverseLeastHeat = new double[_matrix.VectorLength];
        for (int p = 0; p < _cells; p++)
        {
            _inverseLeastHeat[p] = 1 / system.Network.LeastHeat[p];
        }

        _empty = [.. Enumerable.Range(0, _cells).Where(p => system.Grid.MaterialAt(p) is null)];
        _factoredHeat = new double[system.Network.Phase.Count];
        _diagonal = new double[system.Grid.Count];
        Rates = new double[_matrix.VectorLength];
        BodyRates = new double[bodies];
        ChannelWatts = new double[16];
    }

    /// <summary>Heat flows into the cells at the solution [W].</summary>
    internal double[] Rates { get; }

    /// <summary>Heat flows into the bodies at the solution [W].</summary>
    internal double[] BodyRates { get; }

    /// <summary>Heat flows from outside by channel at the solution [W].</summary>
    internal double[] ChannelWatts { get; }

    /// <summary>Number of whole factorisations so far.</summary>
    internal int WholeFactorisations { get; private set; }

    /// <summary>Number of tail factorisations so far.</summary>
    internal int TailFactorisations { get; private set; }

    /// <summary>Number of solves so far.</summary>
    internal int Solves { get; private set; }

    /// <summary>Tells that boundary conditions, contacts or links changed.</summary>
    internal void BoundariesChanged() => _boundariesChanged = true;

    /// <summary>Solves a stage.</summary>
    /// <param name="a">Implicit weight times step [s].</param>
    /// <param name="seconds">Time of the stage [s].</param>
    /// <param name="known">Known part B of the cells [J].</param>
    /// <param name="bodyKnown">Known part of the bodies, as C T [J].</param>
    /// <param name="enthalpy">Guess on entry, solution on return [J].</param>
    /// <param name="bodyK">Guess on entry, solution on return [K].</param>
    /// <param name="toleranceK">Largest temperature error left [K].</param>
    /// <returns>Whether it converged.</returns>
    internal bool Solve(double a, double seconds, double[] known, double[] bodyKnown, double[] enthalpy, double[] bodyK, double toleranceK)
    {
        double last = double.PositiveInfinity;
        for (int round = 0; round < MostRounds; round++)
        {
            _system.Evaluate(seconds, enthalpy, bodyK, Rates, BodyRates, ChannelWatts);
            double miss = Residual(a, known, bodyKnown, enthalpy, bodyK);
            if (miss <= toleranceK)
            {
                return true;
            }

            if (!double.IsFinite(miss))
            {
                return false;
            }

            Prepare(a, seconds, bodyK, round > 1 && miss > 0.2 * last, round > 10);
            last = miss;
            SolveBordered();
            Dense.AddProduct(_heat, _correction, enthalpy, _cells);

            for (int b = 0; b < bodyK.Length; b++)
            {
                bodyK[b] += _bodyCorrection[b];
            }
        }

        return false;
    }

    /// <summary>Solves for temperatures that do not change any more, at the boundary conditions of a time.</summary>
    /// <returns>Whether it converged.</returns>
    internal bool SolveSteady(double seconds, double[] enthalpy, double[] bodyK, double toleranceK)
    {
        const double never = 1e12;
        _system.Network.Update(enthalpy);
        for (int round = 0; round < MostRounds; round++)
        {
            _system.EvaluateAtTemperatures(seconds, bodyK, Rates, BodyRates, ChannelWatts);
            Rates.AsSpan().CopyTo(_correction);
            BodyRates.AsSpan().CopyTo(_bodyCorrection);
            BoundariesChanged();
            Prepare(never, seconds, bodyK, true, false);
            SolveBordered();
            double largest = 0;
            Span<double> kelvin = _system.Network.TemperatureK.AsSpan(_system.Network.Lead, _system.Grid.Count);
            for (int p = 0; p < kelvin.Length; p++)
            {
                kelvin[p] += _correction[p];
                largest = Math.Max(largest, Math.Abs(_correction[p]));
            }

            for (int b = 0; b < bodyK.Length; b++)
            {
                bodyK[b] += _bodyCorrection[b];
                largest = Math.Max(largest, Math.Abs(_bodyCorrection[b]));
            }

            _system.Network.EnthalpiesAt(enthalpy);
            _system.Network.Update(enthalpy);
            if (largest <= toleranceK)
            {
                _system.Evaluate(seconds, enthalpy, bodyK, Rates, BodyRates, ChannelWatts);
                BoundariesChanged();
                return true;
            }
        }

        return false;
    }

    /// <summary>Solves (C/a + K) x = vector with the last factor, without bodies; for filtering error estimates.</summary>
    internal void Filter(double[] vector) => _matrix.Solve(vector);

    // Right-hand side of the correction, and the residual as a temperature.
    private double Residual(double a, double[] known, double[] bodyKnown, double[] enthalpy, double[] bodyK)
    {
        double inverse = 1 / a;
        double largest = Dense.Residual(known, enthalpy, inverse, Rates, _inverseLeastHeat, _correction, _cells);
        for (int b = 0; b < bodyK.Length; b++)
        {
            double heat = _system.Bodies[b].HeatCapacity;
            double miss = ((bodyKnown[b] - (heat * bodyK[b])) * inverse) + BodyRates[b];
            _bodyCorrection[b] = miss;
            largest = Math.Max(largest, Math.Abs(miss) / heat);
        }

        return largest * a;
    }

    private void Prepare(double a, double seconds, double[] bodyK, bool slow, bool stubborn)
    {
        PhaseCells phase = _system.Network.Phase;
        bool whole = a != _factoredStep || _boundariesChanged;
        bool tail = false;
        for (int s = 0; s < phase.Count; s++)
        {
            bool changed = Math.Abs(phase.Heat[s] - _factoredHeat[s]) > SlopeChange * _factoredHeat[s];
            whole |= changed && slow && !phase.Melts(s);
            tail |= changed && phase.Melts(s);
        }

        if (whole || tail || (slow && phase.Count > 0))
        {
            int from = whole ? 0 : _matrix.TailStart;
            AssembleDiagonal(a, whole, stubborn, from);
            AssembleColumns(from);
            if (whole)
            {
                _matrix.Factor();
                WholeFactorisations++;
                _factoredStep = a;
                _boundariesChanged = false;
            }
            else
            {
                _matrix.FactorTail();
                TailFactorisations++;
            }

            ReduceBorder();
        }

        AssembleSchur(a, seconds, bodyK);
    }

    private void AssembleDiagonal(double a, bool whole, bool stubborn, int from)
    {
        ConductionNetwork network = _system.Network;
        PhaseCells phase = network.Phase;
        if (whole)
        {
            network.LeastHeat.AsSpan(0, _cells).CopyTo(_heat);
        }

        for (int s = 0; s < phase.Count; s++)
        {
            if (whole || phase.Cells[s] >= _matrix.TailStart)
            {
                // When Newton's method keeps jumping over a kink, the smaller slope converges for certain, if slowly.
                _factoredHeat[s] = stubborn ? Math.Min(_factoredHeat[s], phase.Heat[s]) : phase.Heat[s];
                _heat[phase.Cells[s]] = _factoredHeat[s];
            }
        }

        int lead = network.Lead;
        int step = _system.Grid.Minor;
        double inverse = 1 / a;
        double[] near = network.MinorConductance;
        double[] far = network.MajorConductance;
        for (int p = from; p < _diagonal.Length; p++)
        {
            int at = lead + p;
            _diagonal[p] = (_heat[p] * inverse) + near[at] + near[at - 1] + far[at] + far[at - step];
        }

        SurfaceSet surfaces = _system.Surfaces;
        for (int s = 0; s < surfaces.Cells.Length; s++)
        {
            _diagonal[surfaces.Cells[s]] += surfaces.Slope[s];
        }

        foreach ((int _, int cell, double conductance) in _system.CellLinks)
        {
            _diagonal[cell] += conductance;
        }

        // Empty cells stand alone with the heat capacity 1; keep their pivot away from zero in a steady solve.
        foreach (int p in _empty)
        {
            _diagonal[p] = 1;
        }
    }

    private void AssembleColumns(int from)
    {
        int lead = _system.Network.Lead;
        double[] near = _system.Network.MinorConductance;
        double[] far = _system.Network.MajorConductance;
        for (int p = from; p < _diagonal.Length; p++)
        {
            _matrix.SetColumn(p, _diagonal[p], -near[lead + p], -far[lead + p]);
        }
    }

    private void ReduceBorder()
    {
        foreach (double[] border in _border)
        {
            border.AsSpan().Clear();
        }

        foreach ((int body, int cell, double conductance) in _system.CellLinks)
        {
            _border[body][cell] -= conductance;
        }

        SurfaceSet surfaces = _system.Surfaces;
        for (int s = 0; _system.ToolFace >= 0 && s < surfaces.Cells.Length; s++)
        {
            if (surfaces.ToolFilm[s] > 0)
            {
                _border[_system.ToolFace][surfaces.Cells[s]] -= surfaces.Conductance[s] * surfaces.ToolFilm[s] / surfaces.Stiffness[s];
            }
        }

        for (int b = 0; b < _border.Length; b++)
        {
            _border[b].AsSpan().CopyTo(_reduced[b]);
            int first = Array.FindIndex(_border[b], v => v != 0);
            if (first >= 0)
            {
                _matrix.Forward(_reduced[b], first);
            }

            for (int c = 0; c <= b; c++)
            {
                _schurBase[b, c] = -Dense.Dot(_reduced[b], _reduced[c], _matrix.TailStart, _cells);
            }
        }
    }

    private void AssembleSchur(double a, double seconds, double[] bodyK)
    {
        int bodies = _border.Length;
        for (int b = 0; b < bodies; b++)
        {
            for (int c = 0; c <= b; c++)
            {
                _schur[b, c] = _schurBase[b, c];
            }

            LumpedBody body = _system.Bodies[b];
            _schur[b, b] += (body.HeatCapacity / a) - body.Outside(seconds, bodyK[b]).Slope;
        }

        foreach ((int body, int _, double conductance) in _system.CellLinks)
        {
            _schur[body, body] += conductance;
        }

        foreach ((int first, int second, double conductance) in _system.BodyLinks)
        {
            _schur[first, first] += conductance;
            _schur[second, second] += conductance;
            _schur[Math.Max(first, second), Math.Min(first, second)] -= conductance;
        }

        SurfaceSet surfaces = _system.Surfaces;
        for (int s = 0; _system.ToolFace >= 0 && s < surfaces.Cells.Length; s++)
        {
            double film = surfaces.ToolFilm[s];
            if (film > 0)
            {
                _schur[_system.ToolFace, _system.ToolFace] += film * (1 - (film / surfaces.Stiffness[s]));
            }
        }
    }

    private void SolveBordered()
    {
        Solves++;
        _matrix.Forward(_correction, 0);
        int bodies = _border.Length;
        for (int b = 0; b < bodies; b++)
        {
            _bodyCorrection[b] -= Dense.Dot(_reduced[b], _correction, _matrix.TailStart, _cells);
        }

        SmallSystem.SolveSymmetric(_schur, _bodyCorrection);
        for (int b = 0; b < bodies; b++)
        {
            Dense.AddScaled(-_bodyCorrection[b], _reduced[b], _correction, _matrix.TailStart, _cells);
        }

        _matrix.Backward(_correction, 0);
    }
}
