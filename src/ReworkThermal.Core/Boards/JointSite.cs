using System.Globalization;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>One joint where it is: on its board, with the body behind its leg and the parts near it. Checked as a whole.</summary>
public sealed record JointSite
{
    /// <summary>Puts a joint on a board.</summary>
    /// <param name="board">The board.</param>
    /// <param name="joint">The joint; it must name one connection per copper layer of the board.</param>
    /// <param name="connector">Body behind the leg; null when there is none.</param>
    /// <param name="neighbours">Parts near the joint.</param>
    /// <exception cref="ImpossibleGeometryException">Board, joint and parts do not fit each other.</exception>
    public JointSite(Board board, Joint joint, Connector? connector, IReadOnlyList<Neighbour> neighbours)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(joint);
        ArgumentNullException.ThrowIfNull(neighbours);
        joint.Check();
        if (joint.Connections.Count != board.StackUp.Copper.Count)
        {
            throw new ImpossibleGeometryException("connection", string.Create(
                CultureInfo.InvariantCulture,
                $"lists {joint.Connections.Count} layer(s), but the board '{board.Name}' has {board.StackUp.Copper.Count} copper layer(s); give one connection per copper layer, top to bottom"));
        }

        if (connector is not null && joint is not ThroughJoint { Leg: not null })
        {
            throw new ImpossibleGeometryException("connector", "needs a through-hole joint with a leg to hang on");
        }

        double rimM = board.EquivalentRadius.Meters;
        double reachM = Reach(joint).Meters;
        if (reachM >= rimM)
        {
            throw new ImpossibleGeometryException("board", string.Create(
                CultureInfo.InvariantCulture,
                $"'{board.Name}' has an equivalent radius of {rimM * 1e3:0.#} mm, which is not larger than the joint with its clearances ({reachM * 1e3:0.##} mm)"));
        }

        foreach (Neighbour neighbour in neighbours)
        {
            if ((neighbour.Distance + neighbour.Extent).Meters > rimM)
            {
                throw new ImpossibleGeometryException("neighbour.distance", string.Create(
                    CultureInfo.InvariantCulture,
                    $"'{neighbour.Name}' ends {(neighbour.Distance + neighbour.Extent).Millimeters:0.#} mm from the joint, beyond the board's equivalent radius of {rimM * 1e3:0.#} mm"));
            }
        }

        Board = board;
        Joint = joint;
        Connector = connector;
        Neighbours = [.. neighbours];
    }

    /// <summary>The board.</summary>
    public Board Board { get; }

    /// <summary>The joint.</summary>
    public Joint Joint { get; }

    /// <summary>Body behind the leg; null when there is none.</summary>
    public Connector? Connector { get; }

    /// <summary>Parts near the joint.</summary>
    public IReadOnlyList<Neighbour> Neighbours { get; }

    private static Length Reach(Joint joint)
    {
        Length reach = joint is ThroughJoint through
            ? Max(through.TopPadDiameter, Max(through.BottomPadDiameter, through.InnerLandDiameter)) / 2
            : ((SurfaceJoint)joint).PadEquivalentDiameter / 2;
        Length land = reach;
        foreach (PlaneConnection connection in joint.Connections)
        {
            reach = connection switch
            {
                PlaneConnection.Relieved relieved => Max(reach, land + relieved.Length),
                PlaneConnection.Isolated isolated => Max(reach, isolated.Antipad / 2),
                _ => reach,
            };
        }

        return reach;
    }

    private static Length Max(Length a, Length b) => a > b ? a : b;
}
