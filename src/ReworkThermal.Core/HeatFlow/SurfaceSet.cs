using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>
/// The outer surfaces of the cells and what acts on them. Each surface has its own temperature, found from the balance between the
/// half cell behind it and everything in front of it (convection, radiation, imposed flux, a tool's face).
/// </summary>
internal sealed class SurfaceSet
{
    private readonly List<Film> _films = [];
    private readonly List<Film> _radiators = [];
    private readonly List<Flux> _fluxes = [];
    private readonly int[] _melting;
    private readonly double[] _supply;
    private readonly double[] _fourth;
    private readonly double[] _filmSum;
    private readonly double[] _radiationSum;
    private readonly double[] _imposed;
    private readonly (int[] Order, double[] Ends)[] _byFace;
    private bool _stale = true;

    internal SurfaceSet(CellGrid grid)
    {
        All = [.. CellSurface.Of(grid)];
        Conductance = [.. All.Select(s => s.Conductance)];
        Cells = [.. All.Select(s => s.Cell)];
        TemperatureK = new double[All.Length];
        Slope = new double[All.Length];
        Stiffness = new double[All.Length];
        ToolFilm = new double[All.Length];
        _byFace = [.. Enum.GetValues<ThermalFace>().Select(face =>
        {
            int[] order = [.. Enumerable.Range(0, All.Length).Where(s => All[s].Face == face).OrderBy(s => All[s].To)];
            return (order, order.Select(s => All[s].To).ToArray());
        })];
        _supply = new double[All.Length];
        _fourth = new double[All.Length];
        _filmSum = new double[All.Length];
        _radiationSum = new double[All.Length];
        _imposed = new double[All.Length];
        _melting = [.. Enumerable.Range(0, All.Length).Where(i => grid.MaterialAt(Cells[i])!.Melts)];
    }

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

    /// <summary>Conductance to a tool's face [W/K], zero where it does not touch.</summary>
    internal double[] ToolFilm { get; }

    /// <summary>Takes everything away that acts on the surfaces.</summary>
    internal void Clear()
    {
        _films.Clear();
        _radiators.Clear();
        _fluxes.Clear();
        _stale = true;
        ToolFilm.AsSpan().Clear();
    }

    /// <summary>Adds convection over part of a face.</summary>
    internal void AddConvection(ThermalFace face, double from, double to, Func<double, double> coefficient, TimeCourse gas, int channel)
    {
        double[] film = new double[All.Length];
        Each(face, from, to, (s, area, at) => film[s] = coefficient(at) * area);
        _films.Add(new Film(film, gas, channel));
        _stale = true;
    }

    /// <summary>Holds part of a face at a temperature.</summary>
    internal void AddHeld(ThermalFace face, double from, double to, TimeCourse course, int channel)
    {
        const double muchLarger = 1e6;
        double[] film = new double[All.Length];
        Each(face, from, to, (s, area, _) => film[s] = muchLarger * Conductance[s] * area / All[s].Area);
        _films.Add(new Film(film, course, channel));
        _stale = true;
    }

    /// <summary>Adds radiation over part of a face: q = exchange sigma (Ts^4 - T^4).</summary>
    internal void AddRadiation(ThermalFace face, double from, double to, double exchange, TimeCourse surroundings, int channel)
    {
        double[] factor = new double[All.Length];
        Each(face, from, to, (s, area, _) => factor[s] = exchange * PhysicalConstants.StefanBoltzmann * area);
        _radiators.Add(new Film(factor, surroundings, channel));
        _stale = true;
    }

    /// <summary>Adds an imposed flux over part of a face [W/m2].</summary>
    internal void AddFlux(ThermalFace face, double from, double to, Func<double, double> flux, int channel)
    {
        double[] power = new double[All.Length];
        Each(face, from, to, (s, area, at) => power[s] = flux(at) * area);
        _fluxes.Add(new Flux(power, channel));
        _stale = true;
    }

    /// <summary>Puts a tool's face on a disc.</summary>
    internal void Touch(ThermalFace face, double radiusM, double conductancePerArea)
    {
        ToolFilm.AsSpan().Clear();
        Each(face, 0, radiusM, (s, area, _) => ToolFilm[s] = conductancePerArea * area);
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
        if (_stale)
        {
            SumUp();
        }

        for (int s = 0; s < Cells.Length; s++)
        {
            _supply[s] = (Conductance[s] * cellTemperatureK[Cells[s]]) + (ToolFilm[s] * toolFaceK) + _imposed[s];
        }

        foreach (Film film in _films)
        {
            Dense.AddScaled(film.Course.KelvinAt(seconds), film.Strength, _supply, 0, Cells.Length);
        }

        foreach (Film radiator in _radiators)
        {
            Dense.AddScaled(Fourth(radiator.Course.KelvinAt(seconds)), radiator.Strength, _supply, 0, Cells.Length);
        }

        double fromTool = 0;
        for (int s = 0; s < Cells.Length; s++)
        {
            double surface = Balance(s);
            TemperatureK[s] = surface;
            _fourth[s] = Fourth(surface);
            rates[Cells[s]] += Conductance[s] * (surface - cellTemperatureK[Cells[s]]);
            fromTool += ToolFilm[s] * (toolFaceK - surface);
        }

        foreach (Film film in _films)
        {
            channelWatts[film.Channel] += (film.Sum * film.Course.KelvinAt(seconds)) - Dense.Dot(film.Strength, TemperatureK, 0, Cells.Length);
        }

        foreach (Film radiator in _radiators)
        {
            channelWatts[radiator.Channel] += (radiator.Sum * Fourth(radiator.Course.KelvinAt(seconds))) - Dense.Dot(radiator.Strength, _fourth, 0, Cells.Length);
        }

        foreach (Flux flux in _fluxes)
        {
            channelWatts[flux.Channel] += flux.Sum;
        }

        return fromTool;
    }

    // Surface temperature from its balance: linear in everything but radiation, for which Newton's method doubles the digits each round.
    private double Balance(int s)
    {
        double stiffness = Conductance[s] + ToolFilm[s] + _filmSum[s];
        double radiation = _radiationSum[s];
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

    private void SumUp()
    {
        _filmSum.AsSpan().Clear();
        _radiationSum.AsSpan().Clear();
        _imposed.AsSpan().Clear();
        foreach (Film film in _films)
        {
            Dense.AddScaled(1, film.Strength, _filmSum, 0, Cells.Length);
        }

        foreach (Film radiator in _radiators)
        {
            Dense.AddScaled(1, radiator.Strength, _radiationSum, 0, Cells.Length);
        }

        foreach (Flux flux in _fluxes)
        {
            Dense.AddScaled(1, flux.Power, _imposed, 0, Cells.Length);
        }

        _stale = false;
    }

    // Odd in temperature: a trial of Newton's method may lie below absolute zero, and there too a warmer surface must send out more.
    private static double Fourth(double kelvin) => kelvin * kelvin * kelvin * Math.Abs(kelvin);

    private void Each(ThermalFace face, double from, double to, Action<int, double, double> act)
    {
        for (int s = 0; s < All.Length; s++)
        {
            CellSurface surface = All[s];
            double low = Math.Max(from, surface.From);
            double high = Math.Min(to, surface.To);
            if (surface.Face != face || high <= low)
            {
                continue;
            }

            bool flat = face is ThermalFace.Top or ThermalFace.Bottom;
            double share = flat
                ? ((high * high) - (low * low)) / ((surface.To * surface.To) - (surface.From * surface.From))
                : (high - low) / (surface.To - surface.From);
            act(s, surface.Area * share, (surface.From + surface.To) / 2);
        }
    }

    private sealed record Film(double[] Strength, TimeCourse Course, int Channel)
    {
        internal double Sum { get; } = Strength.Sum();
    }

    private sealed record Flux(double[] Power, int Channel)
    {
        internal double Sum { get; } = Power.Sum();
    }
}
