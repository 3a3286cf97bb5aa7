using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ReworkThermal.Core.Tests.Behaviour;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>What must hold however long a step through melting is: the run ends, heat is conserved, nothing gets hotter than what heats it.</summary>
[Properties(Arbitrary = [typeof(PhasesMixSeeds)])]
public sealed class HeatFlowLongStepTests(ITestOutputHelper output)
{
    /// <summary>
    /// Room for the maximum principle, over the tolerance of a step. The exact solution has none; a second-order rule may overshoot by
    /// its local error, whose root mean square over all cells is what the tolerance limits. Over 200 such runs the largest excess was
    /// half a percent of the tolerance.
    /// </summary>
    private const double RoomOverTolerance = 0.1;

    /// <summary>
    /// Share of the heat moved that may be out of balance, per kelvin of the tolerance of a step. Each stage is solved to a share of that
    /// tolerance, and what is left adds up over the run. Over 6,000 such runs the most was 2.8e-4; one among others reached 4.6e-4.
    /// </summary>
    private const double UnbalancedPerKelvin = 1e-3;

    [Property(MaxTest = 60)]
    public Property A_run_through_melting_ends_in_balance_between_the_coldest_and_the_hottest_around_it(int seed)
    {
        HeatFlowLongSteps run = new(seed);
        bool ended = run.Run();
        double room = RoomOverTolerance * run.ToleranceK;
        return (ended && run.AboveK <= room && run.BelowK <= room && run.Engine.Ledger.BalanceError < UnbalancedPerKelvin * run.ToleranceK)
            .Label($"seed {seed}: {run}: ended {ended} at {run.Engine.TimeS:0.0} s, {run.AboveK:0.000} K above, {run.BelowK:0.000} K below, balance {run.Engine.Ledger.BalanceError:0.0e0}");
    }

    /// <summary>
    /// Slow heating through melting, in steps much longer than the time a cell takes to melt: each of these runs once threw a trial
    /// below absolute zero and ended in a matrix without a factor.
    /// </summary>
    [Theory]
    [InlineData(8)]
    [InlineData(41)]
    [InlineData(68)]
    [InlineData(70)]
    [InlineData(72)]
    [InlineData(77)]
    [InlineData(116)]
    [InlineData(172)]
    [InlineData(176)]
    [InlineData(189)]
    public void A_long_step_through_melting_is_solved_without_leaving_the_range_of_temperatures(int seed)
    {
        HeatFlowLongSteps run = new(seed);

        Assert.True(run.Run(), $"{run}: stuck at {run.Engine.TimeS:0.0} s, {run.Engine.LastFailure}");
        output.WriteLine($"{run}: {run.Engine.Steps} steps, {run.Engine.Rejections} thrown away, {run.Engine.Unsolved} of them unsolved, {run.Engine.Solver.Solves} solves");
        Assert.InRange(run.AboveK, double.NegativeInfinity, RoomOverTolerance * run.ToleranceK);
        Assert.InRange(run.BelowK, double.NegativeInfinity, RoomOverTolerance * run.ToleranceK);
        Assert.InRange(run.Engine.Ledger.BalanceError, 0, UnbalancedPerKelvin * run.ToleranceK);
    }
}
