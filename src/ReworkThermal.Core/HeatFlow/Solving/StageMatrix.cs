using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>
/// The matrix C/a + K of an implicit stage, symmetric positive definite, with the lumped bodies as its border
/// (<see cref="BodyBorder"/>). It is factored afresh only when the step, the boundary conditions or a melting slope changed, and then only its
/// tail (the joint) unless the step or the boundary conditions changed.
/// </summary>
internal sealed class StageMatrix
{
    // Relative change of a melting slope or of a tool's contact from which a factor is renewed; a factor that is this far off still converges in a few rounds.
    private const double SlopeChange = 0.05;

    private readonly ThermalSystem _system;
    private readonly BandedCholesky _matrix;
    private readonly BodyBorder _bodies;
    private readonly int[] _empty;
    private readonly int _cells;
    private readonly double[] _factoredHeat;
    private readonly double[] _diagonal;
    private double _factoredStep = double.NaN;
    private double _factoredContact;
    private bool _boundariesChanged = true;

    internal StageMatrix(ThermalSystem system)
    {
        _system = system;
        _matrix = system.Matrix;
        _cells = system.Grid.Count;
        _bodies = new BodyBorder(system);
        _empty = [.. Enumerable.Range(0, _cells).Where(p => system.Grid.MaterialAt(p) is null)];
        _factoredHeat = new double[system.Network.Phase.Count];
        _diagonal = new double[_cells];
        Heat = new double[_matrix.VectorLength];
        Surround = new double[system.Network.Phase.Count];
        Correction = new double[_matrix.VectorLength];
    }

    /// <summary>Heat capacity of each cell in the factored matrix [J/K].</summary>
    internal double[] Heat { get; }

    /// <summary>Residual of each cell before a solve [W], correction after it [K].</summary>
    internal double[] Correction { get; }

    /// <summary>Residual of each lumped body before a solve [W], correction after it [K].</summary>
    internal double[] BodyCorrection => _bodies.Correction;

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
        double contact = _system.Surfaces.Tool.PerArea;
        bool tail = Math.Abs(contact - _factoredContact) > SlopeChange * _factoredContact;
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
            _factoredContact = contact;
            _bodies.Reduce();
        }

        _bodies.Assemble(a, seconds, bodyK);
    }

    /// <summary>Solves for the corrections of cells and bodies, in place of their residuals.</summary>
    internal void Solve()
    {
        Solves++;
        _matrix.Forward(Correction, 0);
        _bodies.Solve(Correction);
        _matrix.Backward(Correction, 0);
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
}
