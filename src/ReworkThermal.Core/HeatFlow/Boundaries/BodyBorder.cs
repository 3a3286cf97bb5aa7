using ReworkThermal.Core.HeatFlow.Solving;
using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>
/// The lumped bodies as a border of the matrix of the cells: what ties them to cells and surfaces, reduced by the cells' factor, and the
/// Schur complement that is left of them.
/// </summary>
internal sealed class BodyBorder
{
    private readonly ThermalSystem _system;
    private readonly BandedCholesky _matrix;
    private readonly double[][] _border;
    private readonly double[][] _reduced;
    private readonly double[,] _schur;
    private readonly double[,] _schurBase;
    private readonly int _cells;

    internal BodyBorder(ThermalSystem system)
    {
        _system = system;
        _matrix = system.Matrix;
        _cells = system.Grid.Count;
        int bodies = system.Bodies.Length;
        _border = [.. system.Bodies.Select(_ => new double[_matrix.VectorLength])];
        _reduced = [.. system.Bodies.Select(_ => new double[_matrix.VectorLength])];
        _schur = new double[bodies, bodies];
        _schurBase = new double[bodies, bodies];
        Correction = new double[bodies];
    }

    /// <summary>Residual of each body before a solve [W], correction after it [K].</summary>
    internal double[] Correction { get; }

    /// <summary>Reduces the border by a new factor of the cells.</summary>
    internal void Reduce()
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

    /// <summary>Brings the Schur complement up to date for a stage.</summary>
    /// <param name="a">Implicit weight times step [s].</param>
    /// <param name="seconds">Time of the stage [s].</param>
    /// <param name="bodyK">Temperatures of the bodies [K].</param>
    internal void Assemble(double a, double seconds, double[] bodyK)
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

    /// <summary>Solves for the corrections of the bodies, in place of their residuals, and takes their effect off the cells.</summary>
    /// <param name="cells">Residuals of the cells after the forward sweep; ready for the backward sweep on return.</param>
    internal void Solve(double[] cells)
    {
        for (int b = 0; b < _border.Length; b++)
        {
            Correction[b] -= Dense.Dot(_reduced[b], cells, _matrix.TailStart, _cells);
        }

        SmallSymmetricSystem.Solve(_schur, Correction);
        for (int b = 0; b < _border.Length; b++)
        {
            Dense.AddScaled(-Correction[b], _reduced[b], cells, _matrix.TailStart, _cells);
        }
    }
}
