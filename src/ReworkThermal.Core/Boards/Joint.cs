namespace ReworkThermal.Core.Boards;

/// <summary>A soldered joint: through a plated hole (<see cref="ThroughJoint"/>) or on the surface (<see cref="SurfaceJoint"/>).</summary>
public abstract record Joint
{
    private protected Joint()
    {
    }

    /// <summary>Name for reports.</summary>
    public required string Name { get; init; }

    /// <summary>How each copper layer meets the barrel (or the vias), top to bottom, one per copper layer of the board.</summary>
    public required IReadOnlyList<PlaneConnection> Connections { get; init; }

    /// <summary>Checks what no single field can show.</summary>
    /// <exception cref="ImpossibleGeometryException">The parts do not fit each other.</exception>
    public abstract void Check();
}
