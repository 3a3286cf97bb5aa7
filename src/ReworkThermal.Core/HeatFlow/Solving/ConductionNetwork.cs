using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Meshing;

namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>
/// Heat capacities of the cells and conductances between them. Vectors carry a lead of zeros so that the neighbours of every cell
/// can be read without end cases; <see cref="Lead"/> + p is the place of cell p.
/// </summary>
/// <remarks>
/// Two cells are joined by the series of their half-cell resistances: ln(r2/r1)/(2 pi k dz) along r (exact for a ring), dz/(k A) along
/// z, plus a contact. In the core, from the axis out to the first change of material, fields are even in r, not logarithmic: there the
/// resistance is dr/(2 pi r k dz), exact for a parabola. Method: Patankar, Numerical Heat Transfer and Fluid Flow (1980), section 4.2-3
/// (harmonic mean at the face).
/// </remarks>
internal sealed class ConductionNetwork
{
    /// <summary>Temperature at which the enthalpy of a cell of constant heat capacity is zero [K].</summary>
    internal const double ReferenceK = 273.15;

    private readonly CellGrid _grid;
    private readonly double[] _minor;
    private readonly double[] _major;
    private readonly double[] _inverseHeat;
    private readonly PhaseCells _phase;

    internal ConductionNetwork(CellGrid grid, int vectorLength)
    {
        _grid = grid;
        Lead = (grid.Minor + 3) / 4 * 4;
        int padded = Lead + vectorLength + Lead;
        _minor = new double[padded];
        _major = new double[padded];
        _inverseHeat = new double[vectorLength];
        TemperatureK = new double[padded];
        TemperatureK.AsSpan().Fill(ReferenceK);
        LeastHeat = new double[vectorLength];
        LeastHeat.AsSpan().Fill(1);
        FillHeat();
        _phase = new PhaseCells(grid, this);
        FillConductances();
    }

    /// <summary>Zeros in front of cell 0 in the padded vectors.</summary>
    internal int Lead { get; }

    /// <summary>Cell temperatures [K], padded.</summary>
    internal double[] TemperatureK { get; }

    /// <summary>Heat capacity of each cell [J/K]; the least one where it varies; 1 for empty cells.</summary>
    internal double[] LeastHeat { get; }

    /// <summary>Cells whose heat capacity or conductivity varies.</summary>
    internal PhaseCells Phase => _phase;

    /// <summary>Conductances to the next cell of the fast direction [W/K], padded.</summary>
    internal double[] MinorConductance => _minor;

    /// <summary>Conductances to the next cell of the slow direction [W/K], padded.</summary>
    internal double[] MajorConductance => _major;

    /// <summary>Temperatures and conductances from enthalpies.</summary>
    /// <param name="enthalpy">Enthalpy of each cell [J].</param>
    internal void Update(double[] enthalpy)
    {
        ref double h = ref MemoryMarshal.GetArrayDataReference(enthalpy);
        ref double c = ref MemoryMarshal.GetArrayDataReference(_inverseHeat);
        ref double t = ref MemoryMarshal.GetArrayDataReference(TemperatureK);
        Vector256<double> reference = Vector256.Create(ReferenceK);
        for (int p = 0; p < _grid.Count; p += 4)
        {
            Vector256<double> value = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref h, (nuint)p), Vector256.LoadUnsafe(ref c, (nuint)p), reference);
            value.StoreUnsafe(ref t, (nuint)(Lead + p));
        }

        _phase.Update(enthalpy);
    }

    /// <summary>Net heat flow into each cell from its neighbours [W].</summary>
    internal void Rates(double[] rates)
    {
        ref double t = ref MemoryMarshal.GetArrayDataReference(TemperatureK);
        ref double near = ref MemoryMarshal.GetArrayDataReference(_minor);
        ref double far = ref MemoryMarshal.GetArrayDataReference(_major);
        ref double f = ref MemoryMarshal.GetArrayDataReference(rates);
        int step = _grid.Minor;
        for (int p = 0; p < _grid.Count; p += 4)
        {
            int at = Lead + p;
            Vector256<double> own = Vector256.LoadUnsafe(ref t, (nuint)at);
            Vector256<double> sum = Vector256.LoadUnsafe(ref near, (nuint)at) * (Vector256.LoadUnsafe(ref t, (nuint)(at + 1)) - own);
            sum = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref near, (nuint)(at - 1)), Vector256.LoadUnsafe(ref t, (nuint)(at - 1)) - own, sum);
            sum = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref far, (nuint)at), Vector256.LoadUnsafe(ref t, (nuint)(at + step)) - own, sum);
            sum = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref far, (nuint)(at - step)), Vector256.LoadUnsafe(ref t, (nuint)(at - step)) - own, sum);
            sum.StoreUnsafe(ref f, (nuint)p);
        }
    }

    /// <summary>Enthalpies from temperatures.</summary>
    internal void EnthalpiesAt(double[] enthalpy)
    {
        for (int p = 0; p < _grid.Count; p++)
        {
            enthalpy[p] = (TemperatureK[Lead + p] - ReferenceK) * LeastHeat[p];
        }

        _phase.EnthalpiesAt(enthalpy);
    }

    private void FillHeat()
    {
        for (int i = 0; i < _grid.Radial.Count; i++)
        {
            for (int j = 0; j < _grid.Axial.Count; j++)
            {
                int p = _grid.Index(i, j);
                if (_grid.MaterialAt(p) is { } material)
                {
                    LeastHeat[p] = (_grid.Volume(i, j) * material.VolumetricHeat) + _grid.ExtraHeat[p];
                }

                _inverseHeat[p] = 1 / LeastHeat[p];
            }
        }
    }

    private void FillConductances()
    {
        for (int i = 0; i < _grid.Radial.Count; i++)
        {
            for (int j = 0; j < _grid.Axial.Count; j++)
            {
                if (_grid.MaterialAt(i, j) is null)
                {
                    continue;
                }

                if (i > 0 && _grid.MaterialAt(i - 1, j) is not null)
                {
                    JoinRadially(i, j);
                }

                if (j + 1 < _grid.Axial.Count && _grid.MaterialAt(i, j + 1) is not null)
                {
                    JoinAxially(i, j);
                }
            }
        }
    }

    // The cell nearer the axis stands behind: index grows towards the axis.
    private void JoinRadially(int i, int j)
    {
        double face = _grid.Radial.Faces[i];
        double height = 2 * Math.PI * _grid.Axial.Width(j);
        bool core = InCore(i, j);
        double outer = (core ? (_grid.Radial.Centres[i] - face) / face : Math.Log(_grid.Radial.Centres[i] / face)) / height;
        double inner = (core ? (face - _grid.Radial.Centres[i - 1]) / face : Math.Log(face / _grid.Radial.Centres[i - 1])) / height;
        Join(_grid.Index(i, j), _grid.Index(i - 1, j), outer, inner, 0, _grid.RadialMajor, true);
    }

    private bool InCore(int i, int j)
    {
        int same = i;
        while (same > 0 && ReferenceEquals(_grid.MaterialAt(same - 1, j), _grid.MaterialAt(i, j)))
        {
            same--;
        }

        return same == 0 && _grid.Radial.Faces[0] == 0;
    }

    private void JoinAxially(int i, int j)
    {
        double area = _grid.RingArea(i);
        double lower = _grid.Axial.Width(j) / 2 / area;
        double upper = _grid.Axial.Width(j + 1) / 2 / area;
        int p = _grid.Index(i, j);
        double contact = 1 / (_grid.ContactOnTop[p] * area);
        Join(p, _grid.Index(i, j + 1), lower, upper, contact, !_grid.RadialMajor, false);
    }

    private void Join(int a, int b, double geometryA, double geometryB, double contact, bool major, bool radial)
    {
        ThermalMaterial first = _grid.MaterialAt(a)!;
        ThermalMaterial second = _grid.MaterialAt(b)!;
        double ka = radial ? first.RadialConductivity : first.AxialConductivity;
        double kb = radial ? second.RadialConductivity : second.AxialConductivity;
        double[] target = major ? _major : _minor;
        target[Lead + a] = 1 / ((geometryA / ka) + (geometryB / kb) + contact);
        if (first.Melts || second.Melts)
        {
            _phase.AddFace(target, Lead + a, (a, geometryA, ka), (b, geometryB, kb), contact);
        }
    }
}
