using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>
/// The matrix C/a + K of an implicit stage, symmetric positive definite, with the lumped bodies as a border that is eliminated by its
/// Schur complement. It is factored afresh only when the step, the boundary conditions or a melting slope changed, and then only its
/// tail (the joint) unless the step or the boundary conditions changed.
/// </summary>
internal sealed class StageMatrix
{
    private const double SlopeChange = 0.05;

    private readonly ThermalSystem _system;
    private readonly BandedCholesky _matrix;
    private readonly double[][] _border;
    private readonly double[][] _reduced;
    private readonly double[,] _schur;
    private readonly double[,] _schurBase;
    private readonly int[] _empty;
    private readonly int _cells;
    private readonly double[] _factoredHeat;
    private readonly double[] _diagonal;
    private double _factoredStep = double.NaN;
    private bool _boundariesChanged = true;

    internal StageMatrix(ThermalSystem system)
    {
        _system = system;
        _matrix = system.Matrix;
        _cells = system.Grid.Count;
        int bodies = system.Bodies.Length;
        _border = [.. system.Bodies.Select(_ => new double[_matrix.VectorLength])];
        _reduced = [.. system.Bodies.Select(_ => new double[_matrix.VectorLength])];
        _schur = new double[bodies, bodies];
        _schurBase = new double[bodies, bodies];
        _empty = [.. Enumerable.Range(0, _cells).Where(p => system.Grid.MaterialAt(p) is null)];
        _factoredHeat = new double[system.Network.Phase.Count];
        _diagonal = new double[_cells];
        Heat = new double[_matrix.VectorLength];
        Surround = new double[system.Network.Phase.Count];
        Correction = new double[_matrix.VectorLength];
        BodyCorrection = new double[bodies];
    }

    /// <summary>Heat capacity of each cell in the factored matrix [J/K].</summary>
    internal double[] Heat { get; }

    /// <summary>Residual of each cell before a solve [W], correction after it [K].</summary>
    internal double[] Correction { get; }

    /// <summary>Residual of each lumped body before a solve [W], correction after it [K].</summary>
    internal double[] BodyCorrection { get; }

    /// <summary>
    /// Implicit weight times step times the conductances of a cell to all around it, in the factored matrix [J/K]; by slot of the cells
    /// whose heat capacity varies.
    /// </summary>
    internal double[] Surround { get; }

    /// <summary>Number of factorisations so far, whole and of the tail.</summary>
    internal int Factorisations { get; private set; }

    /// <summary>Number of solves so far.</summary>
    internal int Solves { get; private set; }

    /// <summary>Tells that boundary conditions, contacts or links changed.</summary>
    internal void BoundariesChanged() => _boundariesChanged = true;

    /// <summary>Solves with the last factor, without bodies.</summary>
    internal void Filter(double[] vector) => _matrix.Solve(vector);

    /// <summary>Brings the factor up to date for a stage.</summary>
    /// <param name="a">Implicit weight times step [s].</param>
    /// <param name="seconds">Time of the stage [s].</param>
    /// <param name="bodyK">Temperatures of the lumped bodies [K].</param>
    /// <param name="slow">Whether the last factor converged slowly.</param>
    internal void Prepare(double a, double seconds, double[] bodyK, bool slow)
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
            AssembleDiagonal(a, whole, from);
            NoteSurround(a, from);
            AssembleColumns(from);
            if (whole)
            {
                _matrix.Factor();
                _factoredStep = a;
                _boundariesChanged = false;
            }
            else
            {
                _matrix.FactorTail();
            }

            Factorisations++;
            ReduceBorder();
        }

        AssembleSchur(a, seconds, bodyK);
    }

    private void AssembleDiagonal(double a, bool whole, int from)
    {
        ConductionNetwork network = _system.Network;
        PhaseCells phase = network.Phase;
        if (whole)
        {
            network.LeastHeat.AsSpan(0, _cells).CopyTo(Heat);
        }

        for (int s = 0; s < phase.Count; s++)
        {
            if (whole || phase.Cells[s] >= _matrix.TailStart)
            {
                _factoredHeat[s] = phase.Heat[s];
                Heat[phase.Cells[s]] = _factoredHeat[s];
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
            _diagonal[p] = (Heat[p] * inverse) + near[at] + near[at - 1] + far[at] + far[at - step];
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

    private void NoteSurround(double a, int from)
    {
        PhaseCells phase = _system.Network.Phase;
        for (int s = 0; s < phase.Count; s++)
        {
            int p = phase.Cells[s];
            if (p >= from)
            {
                Surround[s] = (a * _diagonal[p]) - Heat[p];
            }
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

    /// <summary>Solves for the corrections of cells and bodies, in place of their residuals.</summary>
    internal void Solve()
    {
        Solves++;
        _matrix.Forward(Correction, 0);
        int bodies = _border.Length;
        for (int b = 0; b < bodies; b++)
        {
            BodyCorrection[b] -= Dense.Dot(_reduced[b], Correction, _matrix.TailStart, _cells);
        }

        SmallSystem.SolveSymmetric(_schur, BodyCorrection);
        for (int b = 0; b < bodies; b++)
        {
            Dense.AddScaled(-BodyCorrection[b], _reduced[b], Correction, _matrix.TailStart, _cells);
        }

        _matrix.Backward(Correction, 0);
    }
}
