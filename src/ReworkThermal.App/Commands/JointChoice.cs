using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Data.Profiles;

namespace ReworkThermal.App.Commands;

/// <summary>A joint that was named on the command line, on its board.</summary>
internal abstract record JointChoice
{
    private JointChoice()
    {
    }

    /// <summary>Joint and board fit each other.</summary>
    /// <param name="Joint">The through-hole joint.</param>
    /// <param name="Board">The board.</param>
    /// <param name="Notes">What was assumed, one sentence each.</param>
    internal sealed record Chosen(ThroughJoint Joint, Board Board, IReadOnlyList<string> Notes) : JointChoice;

    /// <summary>The names do not lead to one joint on one board.</summary>
    /// <param name="Reason">What is wrong and what would be right.</param>
    internal sealed record Refused(string Reason) : JointChoice;

    /// <summary>Looks names up.</summary>
    /// <param name="jointId">Identifier of a joint profile.</param>
    /// <param name="boardId">Identifier of a board profile; null to take the only board that the joint fits.</param>
    /// <param name="profiles">All profiles.</param>
    /// <returns>The joint on its board, or why there is none.</returns>
    internal static JointChoice Find(string jointId, string? boardId, ProfileLibrary profiles)
    {
        if (!profiles.Joints.TryGetValue(jointId, out JointProfile? profile))
        {
            return new Refused(Refusals.UnknownName("--joint", jointId, profiles.Joints.Keys));
        }

        if (profile.Joint is not ThroughJoint joint)
        {
            return new Refused(Refusals.NotThrough(jointId));
        }

        if (boardId is null)
        {
            IReadOnlyList<string> fitting = JointOnBoard.BoardsFor(profile, profiles);
            return fitting.Count == 1
                ? new Chosen(joint, profiles.Boards[fitting[0]], [Assumptions.OnlyBoard(fitting[0])])
                : new Refused(Refusals.WhichBoard(jointId, fitting));
        }

        if (!profiles.Boards.TryGetValue(boardId, out Board? board))
        {
            return new Refused(Refusals.UnknownName("--board", boardId, profiles.Boards.Keys));
        }

        return JointOnBoard.Put(profile, board, out _) is { } misfit ? new Refused(Refusals.DoesNotFit(jointId, boardId, misfit)) : new Chosen(joint, board, []);
    }
}
