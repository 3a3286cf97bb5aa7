using FsCheck.Xunit;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using static ReworkThermal.Core.Tests.HeatFlowBench;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>Trends that must hold for any joint: more copper never helps, more heat never hurts.</summary>
public sealed class HeatFlowTrendTests
{
    // Error control and mesh differ a little from run to run; a trend may be off by this much.
    private const double SlackS = 0.02;

    [Property(MaxTest = 15)]
    public bool More_planes_never_flow_sooner(byte a, byte b)
    {
        Case made = Case.From(a, b);

        return Seconds(made with { Planes = made.Planes + 1 }) >= Seconds(made) - SlackS;
    }

    [Property(MaxTest = 15)]
    public bool A_hotter_iron_never_flows_later(byte a, byte b, byte c)
    {
        Case made = Case.From(a, b);

        return Seconds(made with { Tip = made.Tip + 5 + (c / 4.0) }) <= Seconds(made) + SlackS;
    }

    [Property(MaxTest = 15)]
    public bool More_preheat_never_flows_later(byte a, byte b, byte c)
    {
        Case made = Case.From(a, b);

        return Seconds(made with { Start = made.Start + 5 + (c / 4.0) }) <= Seconds(made) + SlackS;
    }

    [Property(MaxTest = 10)]
    public bool Every_run_closes_its_heat_balance(byte a, byte b)
    {
        return Run(Case.From(a, b).Pose()).Energy.BalanceError < 1e-3;
    }

    private static double Seconds(Case made) => Run(made.Pose()).Flow!.SecondsToFlow ?? double.PositiveInfinity;

    private sealed record Case(int Planes, bool Direct, double Tip, double Start, double Contact)
    {
        internal static Case From(byte a, byte b) => new(a % 4, a % 8 >= 4, 300 + (b / 2.0), 25 + (a / 2.0), b % 2 == 0 ? 15000 : 60000);

        internal JointProblem Pose()
        {
            PlaneConnection connection = Direct ? new PlaneConnection.Direct() : FourSpokes();
            TipSource tip = HeatFlowBench.Tip(Tip, Contact, heat: 5, watts: 120, resistance: 1);
            return Problem(Board(Planes, rise: 0.2), Joint(Planes, connection), tip, 6, Start);
        }
    }
}
