using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Touches;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>A touch as the heat solver needs it.</summary>
internal abstract record JointSetup
{
    private JointSetup()
    {
    }

    /// <summary>It can be simulated.</summary>
    /// <param name="Problem">Joint, solder, room, board heat.</param>
    /// <param name="Tools">The tools.</param>
    /// <param name="Pad">The pad with everything it has had.</param>
    internal sealed record Posed(JointProblem Problem, TouchTools Tools, PadAccount Pad) : JointSetup;

    /// <summary>It cannot.</summary>
    internal sealed record Missing(string Reason) : JointSetup;
}
