using ReworkThermal.Core.Boards;
using ReworkThermal.Data.Profiles;

namespace ReworkThermal.App.Commands;

/// <summary>Puts joint profiles on boards. A joint that does not suit a board is an answer here, not a fault.</summary>
internal static class JointOnBoard
{
    /// <summary>Puts a joint on a board.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="board">The board.</param>
    /// <param name="site">The joint on the board; null when it does not fit.</param>
    /// <returns>Null when it fits, or why it does not.</returns>
    internal static string? Put(JointProfile joint, Board board, out JointSite? site)
    {
        try
        {
            site = joint.On(board);
            return null;
        }
        catch (ImpossibleGeometryException misfit)
        {
            site = null;
            return misfit.Message;
        }
    }

    /// <summary>The boards at hand that a joint fits.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="profiles">All profiles.</param>
    /// <returns>Identifiers of board profiles.</returns>
    internal static IReadOnlyList<string> BoardsFor(JointProfile joint, ProfileLibrary profiles) =>
        [.. profiles.Boards.Where(b => Put(joint, b.Value, out _) is null).Select(b => b.Key)];
}
