using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Meshing;

namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>
/// Everything that stores, conducts and exchanges heat, as one set of rate equations: dH/dt of every cell and C dT/dt of every lumped
/// body, at a time and a state.
/// </summary>
internal sealed class ThermalSystem
{
    private readonly List<string> _channels = [];

    internal ThermalSystem(CellGrid grid, IReadOnlyList<LumpedBody> bodies, double tailRadiusM)
    {
        Grid = grid;
        int tail = 0;
        if (grid.RadialMajor)
        {
            int ring = grid.Radial.Count - 1 - grid.Radial.CellAt(tailRadiusM * (1 + 1e-9));
            tail = Math.Max(0, ring) * grid.Minor;
        }

        Matrix = new Numerics.BandedCholesky(grid.Count, grid.Minor, tail);
        Network = new ConductionNetwork(grid, Matrix.VectorLength);
        Surfaces = new SurfaceSet(grid);
        Bodies = [.. bodies];
        CellLinks = [];
        BodyLinks = [];
    }

    internal CellGrid Grid { get; }

    internal ConductionNetwork Network { get; }

    internal SurfaceSet Surfaces { get; }

    /// <summary>Matrix with the layout of this system.</summary>
    internal Numerics.BandedCholesky Matrix { get; }

    internal LumpedBody[] Bodies { get; }

    /// <summary>Conductances between a lumped body and a cell [W/K].</summary>
    internal List<(int Body, int Cell, double Conductance)> CellLinks { get; }

    /// <summary>Conductances between two lumped bodies [W/K].</summary>
    internal List<(int First, int Second, double Conductance)> BodyLinks { get; }

    /// <summary>Body whose face touches the surfaces, or -1.</summary>
    internal int ToolFace { get; set; } = -1;

    /// <summary>Heating inside the cells [W/m3] by r [m], z [m] and time [s]; null for none. Used to check the solver against made-up solutions.</summary>
    internal Func<double, double, double, double>? Source { get; set; }

    /// <summary>Names of the ledger channels.</summary>
    internal IReadOnlyList<string> Channels => _channels;

    /// <summary>Cell temperatures [K] from cell 0 on.</summary>
    internal ReadOnlySpan<double> CellTemperaturesK => Network.TemperatureK.AsSpan(Network.Lead, Grid.Count);

    /// <summary>Number of a ledger channel, made when it is new.</summary>
    internal int Channel(string name)
    {
        int found = _channels.IndexOf(name);
        if (found >= 0)
        {
            return found;
        }

        _channels.Add(name);
        return _channels.Count - 1;
    }

    /// <summary>Rates at a state; also leaves temperatures, surface temperatures and slopes behind for the matrix.</summary>
    /// <param name="seconds">Time [s].</param>
    /// <param name="enthalpy">Cell enthalpies [J].</param>
    /// <param name="bodyK">Body temperatures [K].</param>
    /// <param name="rates">Heat flow into each cell [W].</param>
    /// <param name="bodyRates">Heat flow into each body [W].</param>
    /// <param name="channelWatts">Heat flow into cells and bodies from outside by channel [W].</param>
    internal void Evaluate(double seconds, double[] enthalpy, double[] bodyK, double[] rates, double[] bodyRates, double[] channelWatts)
    {
        Network.Update(enthalpy);
        EvaluateAtTemperatures(seconds, bodyK, rates, bodyRates, channelWatts);
    }

    /// <summary>Rates at the temperatures the network holds.</summary>
    internal void EvaluateAtTemperatures(double seconds, double[] bodyK, double[] rates, double[] bodyRates, double[] channelWatts)
    {
        Network.Rates(rates);
        Surfaces.Follow(Network.Phase);
        channelWatts.AsSpan().Clear();
        bodyRates.AsSpan().Clear();
        ReadOnlySpan<double> cells = CellTemperaturesK;
        double face = ToolFace >= 0 ? bodyK[ToolFace] : ConductionNetwork.ReferenceK;
        double fromTool = Surfaces.Evaluate(seconds, cells, face, rates, channelWatts);
        if (ToolFace >= 0)
        {
            bodyRates[ToolFace] -= fromTool;
        }

        foreach ((int body, int cell, double conductance) in CellLinks)
        {
            double flow = conductance * (bodyK[body] - cells[cell]);
            rates[cell] += flow;
            bodyRates[body] -= flow;
        }

        foreach ((int first, int second, double conductance) in BodyLinks)
        {
            double flow = conductance * (bodyK[first] - bodyK[second]);
            bodyRates[second] += flow;
            bodyRates[first] -= flow;
        }

        for (int b = 0; b < Bodies.Length; b++)
        {
            double watts = Bodies[b].Outside(seconds, bodyK[b]).Watts;
            bodyRates[b] += watts;
            channelWatts[Bodies[b].Channel] += watts;
        }

        if (Source is not null)
        {
            AddSource(seconds, rates, channelWatts);
        }
    }

    private void AddSource(double seconds, double[] rates, double[] channelWatts)
    {
        int channel = Channel("source");
        for (int i = 0; i < Grid.Radial.Count; i++)
        {
            for (int j = 0; j < Grid.Axial.Count; j++)
            {
                double watts = Source!(Grid.Radial.Centres[i], Grid.Axial.Centres[j], seconds) * Grid.Volume(i, j);
                rates[Grid.Index(i, j)] += watts;
                channelWatts[channel] += watts;
            }
        }
    }
}
