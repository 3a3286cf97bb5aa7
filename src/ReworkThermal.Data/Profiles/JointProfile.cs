using ReworkThermal.Core.Boards;

namespace ReworkThermal.Data.Profiles;

/// <summary>A joint with what stands around it, ready to be put on a board.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Connector">Body behind the leg; null when there is none.</param>
/// <param name="Neighbours">Parts near the joint.</param>
public sealed record JointProfile(Joint Joint, Connector? Connector, IReadOnlyList<Neighbour> Neighbours)
{
    /// <summary>Puts the joint on a board.</summary>
    /// <param name="board">The board; it needs as many copper layers as the joint has connections.</param>
    /// <returns>The checked site.</returns>
    /// <exception cref="ImpossibleGeometryException">Board and joint do not fit each other.</exception>
    public JointSite On(Board board) => new(board, Joint, Connector, Neighbours);
}
