using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.Planning.Pads;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>A touch as the heat solver needs it.</summary>
internal abstract record JointSetup
{
    private JointSetup()
    {
    }

    /// <summary>It can be simulated.</summary>
    /// <param name="Problem">Joint, solder, room, board heat.</param>
    /// <param name="Tip">The tip, or null.</param>
    /// <param name="Jet">The jet of hot air, or null.</param>
    /// <param name="Side">Face it works on.</param>
    /// <param name="Pad">The pad with everything it has had.</param>
    internal sealed record Posed(JointProblem Problem, TipSource? Tip, JetSource? Jet, BoardSide Side, PadAccount Pad) : JointSetup;

    /// <summary>It cannot.</summary>
    internal sealed record Missing(string Reason) : JointSetup;
}
