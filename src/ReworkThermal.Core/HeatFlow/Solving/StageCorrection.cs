using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>
/// One correction of Newton's method within a stage: applied whole, or a share of it when the whole leads away from the solution.
/// </summary>
/// <remarks>
/// The equation of a cell is H + s T = known + what its neighbours send, with s the step times the conductances around the cell. A cell
/// whose capacity changes takes its correction in H + s T, along its own curve: where s is small that is its enthalpy, where s is large
/// (a small cell and a long step) its temperature, and at a kink it passes from one to the other. Taken in enthalpy alone, a cell that
/// leaves its melting plateau would bring all the heat that the plateau swallowed to the heat capacity of the liquid or the solid and
/// land thousands of kelvins off. Method: Brenner and Cancès, SIAM Journal on Numerical Analysis 55 (2017) 1760 (Newton's method in a
/// variable in which both parts of a degenerate equation have bounded slopes); cited from memory.
/// </remarks>
internal sealed class StageCorrection
{
    private readonly ThermalSystem _system;
    private readonly StageMatrix _matrix;
    private readonly int _cells;
    private readonly double[] _fromEnthalpy;
    private readonly double[] _fromBodyK;
    private readonly double[] _kelvin;
    private readonly double[] _bodyKelvin;

    internal StageCorrection(ThermalSystem system, StageMatrix matrix)
    {
        _system = system;
        _matrix = matrix;
        _cells = system.Grid.Count;
        _fromEnthalpy = new double[system.Matrix.VectorLength];
        _kelvin = new double[system.Matrix.VectorLength];
        _fromBodyK = new double[system.Bodies.Length];
        _bodyKelvin = new double[system.Bodies.Length];
    }

    /// <summary>Keeps a correction that the matrix has just found, and the state it starts from.</summary>
    internal void Keep(double[] enthalpy, double[] bodyK)
    {
        enthalpy.AsSpan(0, _cells).CopyTo(_fromEnthalpy);
        _matrix.Correction.AsSpan(0, _cells).CopyTo(_kelvin);
        bodyK.AsSpan().CopyTo(_fromBodyK);
        _matrix.BodyCorrection.AsSpan().CopyTo(_bodyKelvin);
    }

    /// <summary>Writes the state after a share of the correction.</summary>
    internal void Apply(double share, double[] enthalpy, double[] bodyK)
    {
        _fromEnthalpy.AsSpan(0, _cells).CopyTo(enthalpy);
        Dense.AddProduct(share, _matrix.Heat, _kelvin, enthalpy, _cells);
        PhaseCells phase = _system.Network.Phase;
        for (int s = 0; s < phase.Count; s++)
        {
            int p = phase.Cells[s];
            double surround = _matrix.Surround[s];
            enthalpy[p] = phase.Follow(s, _fromEnthalpy[p], share * (_matrix.Heat[p] + surround) * _kelvin[p], surround);
        }

        for (int b = 0; b < bodyK.Length; b++)
        {
            bodyK[b] = _fromBodyK[b] + (share * _bodyKelvin[b]);
        }
    }
}
