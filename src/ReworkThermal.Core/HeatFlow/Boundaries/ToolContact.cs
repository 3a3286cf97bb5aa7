namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>A tool's face on the surfaces: where it touches, and how its contact grows with time.</summary>
internal sealed class ToolContact(CellSurface[] surfaces)
{
    private readonly double[] _area = new double[surfaces.Length];
    private ContactGrowth? _growth;
    private int[] _solderAtFace = [];
    private double _flowK;
    private double _beganS;

    /// <summary>Conductance to the tool's face of each surface [W/K], zero where it does not touch.</summary>
    internal double[] Film { get; } = new double[surfaces.Length];

    /// <summary>Conductance per area at the last evaluation [W/m2K]; zero without a tool.</summary>
    internal double PerArea { get; private set; }

    /// <summary>Takes the tool away.</summary>
    internal void Clear()
    {
        _growth = null;
        PerArea = 0;
        Film.AsSpan().Clear();
    }

    /// <summary>Puts a tool's face on a disc.</summary>
    /// <param name="face">Face of the body.</param>
    /// <param name="radiusM">Radius of the disc [m].</param>
    /// <param name="growth">How the contact grows.</param>
    /// <param name="nowS">Time at which the tool comes down [s].</param>
    /// <param name="solderAtFace">Solder cells that must be molten before a dry contact grows.</param>
    /// <param name="flowK">Temperature at which they are [K].</param>
    internal void Touch(ThermalFace face, double radiusM, ContactGrowth growth, double nowS, int[] solderAtFace, double flowK)
    {
        _growth = growth;
        _solderAtFace = solderAtFace;
        _flowK = flowK;
        _beganS = growth.WaitsForMelt ? double.PositiveInfinity : nowS;
        for (int s = 0; s < surfaces.Length; s++)
        {
            _area[s] = surfaces[s].AreaWithin(face, 0, radiusM);
        }

        Grow(nowS);
    }

    /// <summary>Brings the films up to a time [s].</summary>
    internal void Grow(double seconds)
    {
        if (_growth is null)
        {
            return;
        }

        double now = _growth.At(seconds - _beganS);
        if (now == PerArea)
        {
            return;
        }

        PerArea = now;
        for (int s = 0; s < surfaces.Length; s++)
        {
            Film[s] = now * _area[s];
        }
    }

    /// <summary>Looks at an accepted state: a dry contact begins to grow once all solder at its face flows.</summary>
    /// <param name="seconds">Time of the state [s].</param>
    /// <param name="cellTemperatureK">Cell temperatures from cell 0 on.</param>
    internal void Look(double seconds, ReadOnlySpan<double> cellTemperatureK)
    {
        if (!double.IsPositiveInfinity(_beganS) || _growth is null || _solderAtFace.Length == 0)
        {
            return;
        }

        foreach (int cell in _solderAtFace)
        {
            if (cellTemperatureK[cell] < _flowK)
            {
                return;
            }
        }

        _beganS = seconds;
    }
}
