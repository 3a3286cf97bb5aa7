using System.Runtime.InteropServices;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow.Materials;

/// <summary>The cells whose enthalpy is not a straight line: solder that melts, laminate that passes its glass transition.</summary>
internal sealed class PhaseCells
{
    private readonly ConductionNetwork _network;
    private readonly int[] _cells;
    private readonly int[] _slotOf;
    private readonly double[] _volume;
    private readonly double[] _extraHeat;
    private readonly CaloricTable[] _tables;
    private readonly ThermalMaterial[] _materials;
    private readonly double[] _conductivity;
    private readonly double[] _resistivity;
    private readonly double[] _straightBelow;
    private readonly double[] _heat;
    private readonly double[] _liquid;
    private readonly List<PhaseFace> _faces = [];

    internal PhaseCells(CellGrid grid, ConductionNetwork network)
    {
        _network = network;
        List<int> cells = [];
        List<double> volume = [];
        for (int i = grid.Radial.Count - 1; i >= 0; i--)
        {
            for (int j = 0; j < grid.Axial.Count; j++)
            {
                if (grid.MaterialAt(i, j)?.Table is not null)
                {
                    cells.Add(grid.Index(i, j));
                    volume.Add(grid.Volume(i, j));
                }
            }
        }

        _cells = [.. cells];
        _volume = [.. volume];
        _extraHeat = [.. cells.Select(p => grid.ExtraHeat[p])];
        _materials = [.. cells.Select(p => grid.MaterialAt(p)!)];
        _tables = [.. _materials.Select(m => m.Table!)];
        _conductivity = [.. _materials.Select(m => m.AxialConductivity)];
        _resistivity = [.. _conductivity.Select(k => 1 / k)];
        _straightBelow = [.. Enumerable.Range(0, _cells.Length).Select(s => _materials[s].Melts || _extraHeat[s] > 0 ? double.NegativeInfinity : _volume[s] * _tables[s].FirstKink)];
        _heat = new double[_cells.Length];
        _liquid = new double[_cells.Length];
        _slotOf = new int[grid.Count];
        _slotOf.AsSpan().Fill(-1);
        for (int s = 0; s < _cells.Length; s++)
        {
            _slotOf[_cells[s]] = s;
            _heat[s] = network.LeastHeat[_cells[s]];
        }
    }

    /// <summary>Number of such cells.</summary>
    internal int Count => _cells.Length;

    /// <summary>Positions of the cells in the vectors.</summary>
    internal ReadOnlySpan<int> Cells => _cells;

    /// <summary>Heat capacity dH/dT of each cell at the last update [J/K].</summary>
    internal ReadOnlySpan<double> Heat => _heat;

    /// <summary>Whether a cell melts, rather than passing a glass transition.</summary>
    internal bool Melts(int slot) => _materials[slot].Melts;

    /// <summary>Liquid fraction of a cell at the last update; 0 for cells that do not melt.</summary>
    internal double LiquidOf(int cell) => _slotOf[cell] >= 0 ? _liquid[_slotOf[cell]] : 0;

    /// <summary>Conductivity of a cell that melts over that of its solid.</summary>
    internal double ConductivityShare(int cell) => _conductivity[_slotOf[cell]] / _materials[_slotOf[cell]].AxialConductivity;

    /// <summary>Notes a face at a cell that melts.</summary>
    /// <param name="target">Vector that holds its conductance.</param>
    /// <param name="place">Place in that vector.</param>
    /// <param name="a">First cell, with its half-cell resistance times conductivity [1/m] and its conductivity while it does not melt.</param>
    /// <param name="b">Second cell, likewise.</param>
    /// <param name="contact">Contact resistance [K/W].</param>
    internal void AddFace(double[] target, int place, (int Cell, double Geometry, double Conductivity) a, (int Cell, double Geometry, double Conductivity) b, double contact)
    {
        int slotA = MeltingSlot(a.Cell);
        int slotB = MeltingSlot(b.Cell);
        double constant = contact + (slotA < 0 ? a.Geometry / a.Conductivity : 0) + (slotB < 0 ? b.Geometry / b.Conductivity : 0);
        _faces.Add(new PhaseFace(target, place, slotA, slotB, a.Geometry, b.Geometry, constant));
    }

    /// <summary>Temperatures, slopes, liquid fractions and conductances from enthalpies.</summary>
    internal void Update(double[] enthalpy)
    {
        bool moved = false;
        double[] temperature = _network.TemperatureK;
        for (int s = 0; s < _cells.Length; s++)
        {
            int p = _cells[s];
            if (enthalpy[p] < _straightBelow[s])
            {
                // Laminate below its glass transition: the straight line that the network has already followed.
                _heat[s] = _network.LeastHeat[p];
                continue;
            }

            CaloricTable table = _tables[s];
            double value;
            int piece;
            if (_extraHeat[s] > 0)
            {
                value = WithoutExtra(s, enthalpy[p]);
                piece = table.PieceAt(value);
            }
            else
            {
                value = enthalpy[p] / _volume[s];
                piece = table.PieceAt(value);
            }

            temperature[_network.Lead + p] = table.TemperatureAt(value, piece);
            _heat[s] = (table.Slope(piece) * _volume[s]) + _extraHeat[s];
            if (_materials[s].Melts)
            {
                double liquid = table.LiquidAt(value, piece);
                if (liquid != _liquid[s])
                {
                    _liquid[s] = liquid;
                    _conductivity[s] = _materials[s].AxialConductivity + (liquid * (_materials[s].LiquidConductivity - _materials[s].AxialConductivity));
                    _resistivity[s] = 1 / _conductivity[s];
                    moved = true;
                }
            }
        }

        if (moved)
        {
            UpdateFaces();
        }
    }

    /// <summary>Enthalpies from temperatures.</summary>
    internal void EnthalpiesAt(double[] enthalpy)
    {
        for (int s = 0; s < _cells.Length; s++)
        {
            double kelvin = _network.TemperatureK[_network.Lead + _cells[s]];
            enthalpy[_cells[s]] = (_volume[s] * _tables[s].EnthalpyAt(kelvin)) + (_extraHeat[s] * (kelvin - ConductionNetwork.ReferenceK));
        }
    }

    /// <summary>Follows the curve of a cell until the rise of its enthalpy and that of a heat flow proportional to temperature add up to an amount.</summary>
    /// <param name="slot">Slot of the cell.</param>
    /// <param name="enthalpy">Where to start [J].</param>
    /// <param name="amount">How far to go, either way [J].</param>
    /// <param name="perKelvin">Rise of the heat flow with temperature, zero or more [J/K].</param>
    /// <returns>The enthalpy there [J].</returns>
    internal double Follow(int slot, double enthalpy, double amount, double perKelvin)
    {
        double volume = _volume[slot];
        double value = _extraHeat[slot] > 0 ? WithoutExtra(slot, enthalpy) : enthalpy / volume;
        double rise = _tables[slot].Follow(value, amount / volume, (perKelvin + _extraHeat[slot]) / volume);
        return enthalpy + amount - (perKelvin * rise);
    }

    private int MeltingSlot(int cell) => _slotOf[cell] >= 0 && Melts(_slotOf[cell]) ? _slotOf[cell] : -1;

    private void UpdateFaces()
    {
        foreach (ref readonly PhaseFace face in CollectionsMarshal.AsSpan(_faces))
        {
            double resistance = face.Fixed;
            resistance += face.SlotA >= 0 ? face.GeometryA * _resistivity[face.SlotA] : 0;
            resistance += face.SlotB >= 0 ? face.GeometryB * _resistivity[face.SlotB] : 0;
            face.Target[face.Place] = 1 / resistance;
        }
    }

    // A cell with a lumped heat on top: volume h(T) + extra (T - reference) = enthalpy, solved piece by piece (monotone).
    private double WithoutExtra(int slot, double enthalpy)
    {
        CaloricTable table = _tables[slot];
        double value = enthalpy / _volume[slot];
        for (int round = 0; round < 50; round++)
        {
            int piece = table.PieceAt(value);
            double kelvin = table.TemperatureAt(value, piece);
            double miss = (_volume[slot] * value) + (_extraHeat[slot] * (kelvin - ConductionNetwork.ReferenceK)) - enthalpy;
            double step = miss / (_volume[slot] + (_extraHeat[slot] / table.Slope(piece)));
            value -= step;
            if (Math.Abs(step) <= 1e-12 * Math.Abs(value))
            {
                break;
            }
        }

        return value;
    }
}

/// <summary>A face at a cell that melts: its conductance follows the liquid fraction.</summary>
/// <param name="Target">Vector that holds the conductance.</param>
/// <param name="Place">Place in that vector.</param>
/// <param name="SlotA">Slot of the first cell when it melts, or -1.</param>
/// <param name="SlotB">Slot of the second cell when it melts, or -1.</param>
/// <param name="GeometryA">Half-cell resistance of the first cell times its conductivity [1/m].</param>
/// <param name="GeometryB">Half-cell resistance of the second cell times its conductivity [1/m].</param>
/// <param name="Fixed">Resistance that does not change: a contact, and the half cell that does not melt [K/W].</param>
internal readonly record struct PhaseFace(double[] Target, int Place, int SlotA, int SlotB, double GeometryA, double GeometryB, double Fixed);
