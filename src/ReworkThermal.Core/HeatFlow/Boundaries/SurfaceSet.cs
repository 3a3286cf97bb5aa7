using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Meshing;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>
/// The outer surfaces of the cells. Each surface has its own temperature, found from the balance between the half cell behind it and
/// everything in front of it: its <see cref="Loads"/> and a tool's face.
/// </summary>
internal sealed class SurfaceSet
{
    private readonly int[] _melting;
    private readonly double[] _supply;
    private readonly double[] _fourth;
    private readonly (int[] Order, double[] Ends)[] _byFace;

    internal SurfaceSet(CellGrid grid)
    {
        All = [.. CellSurface.Of(grid)];
        Conductance = [.. All.Select(s => s.Conductance)];
        Cells = [.. All.Select(s => s.Cell)];
        Loads = new SurfaceLoads(All, Conductance);
        TemperatureK = new double[All.Length];
        Slope = new double[All.Length];
        Stiffness = new double[All.Length];
        Tool = new ToolContact(All);
        _byFace = [.. Enum.GetValues<ThermalFace>().Select(face =>
        {
            int[] order = [.. Enumerable.Range(0, All.Length).Where(s => All[s].Face == face).OrderBy(s => All[s].To)];
            return (order, order.Select(s => All[s].To).ToArray());
        })];
        _supply = new double[All.Length];
        _fourth = new double[All.Length];
        _melting = [.. Enumerable.Range(0, All.Length).Where(i => grid.MaterialAt(Cells[i])!.Melts)];
    }

    /// <summary>What acts on the surfaces besides a tool.</summary>
    internal SurfaceLoads Loads { get; }

    /// <summary>All surfaces.</summary>
    internal CellSurface[] All { get; }

    /// <summary>Cell behind each surface.</summary>
    internal int[] Cells { get; }

    /// <summary>Conductance of the half cell behind each surface [W/K].</summary>
    internal double[] Conductance { get; }

    /// <summary>Surface temperatures at the last evaluation [K].</summary>
    internal double[] TemperatureK { get; }

    /// <summary>Size of the derivative of the heat flow into the cell with respect to its temperature [W/K].</summary>
    internal double[] Slope { get; }

    /// <summary>Half-cell conductance plus all films in front, at the last evaluation [W/K].</summary>
    internal double[] Stiffness { get; }

    /// <summary>The contact of a tool's face.</summary>
    internal ToolContact Tool { get; }

    /// <summary>Conductance to a tool's face [W/K], zero where it does not touch.</summary>
    internal double[] ToolFilm => Tool.Film;

    /// <summary>Takes everything away that acts on the surfaces.</summary>
    internal void Clear()
    {
        Loads.Clear();
        Tool.Clear();
    }

    /// <summary>Half-cell conductances of cells that melt, after a change of liquid fraction.</summary>
    internal void Follow(PhaseCells phase)
    {
        foreach (int s in _melting)
        {
            Conductance[s] = All[s].Conductance * phase.ConductivityShare(Cells[s]);
        }
    }

    /// <summary>Temperature of the surface at a place on a face [K]; not a number when there is none.</summary>
    internal double TemperatureAt(ThermalFace face, double at)
    {
        (int[] order, double[] ends) = _byFace[(int)face];
        int found = Array.BinarySearch(ends, at);
        int place = found >= 0 ? found : ~found;
        return place < order.Length && at >= All[order[place]].From ? TemperatureK[order[place]] : double.NaN;
    }

    /// <summary>Starts the surface temperatures from those of the cells.</summary>
    internal void Reset(ReadOnlySpan<double> cellTemperatureK)
    {
        for (int s = 0; s < All.Length; s++)
        {
            TemperatureK[s] = cellTemperatureK[Cells[s]];
        }
    }

    /// <summary>Adds the heat flows at a time to the rates of the cells.</summary>
    /// <param name="seconds">Time [s].</param>
    /// <param name="cellTemperatureK">Cell temperatures from cell 0 on.</param>
    /// <param name="toolFaceK">Temperature of the touching tool's face.</param>
    /// <param name="rates">Rates of the cells [W], added to.</param>
    /// <param name="channelWatts">Heat flow into the body by channel [W], added to.</param>
    /// <returns>Heat flow from the tool's face into the body [W].</returns>
    internal double Evaluate(double seconds, ReadOnlySpan<double> cellTemperatureK, double toolFaceK, double[] rates, double[] channelWatts)
    {
        Tool.Grow(seconds);
        double[] film = Tool.Film;
        double[] imposed = Loads.Imposed;
        for (int s = 0; s < Cells.Length; s++)
        {
            _supply[s] = (Conductance[s] * cellTemperatureK[Cells[s]]) + (film[s] * toolFaceK) + imposed[s];
        }

        Loads.AddSupply(seconds, _supply);
        double fromTool = 0;
        for (int s = 0; s < Cells.Length; s++)
        {
            double surface = Balance(s);
            TemperatureK[s] = surface;
            _fourth[s] = SurfaceLoads.Fourth(surface);
            rates[Cells[s]] += Conductance[s] * (surface - cellTemperatureK[Cells[s]]);
            fromTool += film[s] * (toolFaceK - surface);
        }

        Loads.Book(seconds, TemperatureK, _fourth, channelWatts);
        return fromTool;
    }

    // Surface temperature from its balance: linear in everything but radiation, for which Newton's method doubles the digits each round.
    private double Balance(int s)
    {
        double stiffness = Conductance[s] + ToolFilm[s] + Loads.FilmSum[s];
        double radiation = Loads.RadiationSum[s];
        double surface = TemperatureK[s];
        double slope = stiffness;
        if (radiation == 0)
        {
            surface = _supply[s] / stiffness;
        }
        else
        {
            for (int round = 0; round < 12; round++)
            {
                double cube = radiation * surface * surface * Math.Abs(surface);
                slope = stiffness + (4 * cube);
                double step = (_supply[s] - (stiffness * surface) - (cube * surface)) / slope;
                surface += step;
                if (Math.Abs(step) < 1e-7)
                {
                    break;
                }
            }
        }

        Stiffness[s] = slope;
        Slope[s] = Conductance[s] * (slope - Conductance[s]) / slope;
        return surface;
    }
}
