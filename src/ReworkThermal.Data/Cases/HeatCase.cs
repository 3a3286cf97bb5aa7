using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Posing;
using ReworkThermal.Core.HeatFlow.Solving;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>A heat-flow run as a case file describes it. Start reading this room here.</summary>
public abstract record HeatCase
{
    private HeatCase()
    {
    }

    /// <summary>What the case calls itself.</summary>
    public required string Title { get; init; }

    /// <summary>How fine the run is.</summary>
    public required SolverSettings Settings { get; init; }

    /// <summary>A textbook problem: explicit materials, faces and start; no board and no joint.</summary>
    /// <param name="Problem">The problem.</param>
    public sealed record Posed(PosedProblem Problem) : HeatCase;

    /// <summary>A joint on its board with tools. What its solder takes up on melting is asked of the phase engine.</summary>
    public sealed record AtJoint : HeatCase
    {
        /// <summary>The joint where it is.</summary>
        public required JointSite Site { get; init; }

        /// <summary>Solder that is in the joint before anything is added.</summary>
        public required MassFractions Solder { get; init; }

        /// <summary>Alloy that is mixed in; null for none.</summary>
        public required MassFractions? Added { get; init; }

        /// <summary>Share of the mix that is added alloy; zero for none.</summary>
        public required Ratio AddedShare { get; init; }

        /// <summary>Superheat that the coldest solder must have over the flow temperature.</summary>
        public required TemperatureDelta Superheat { get; init; }

        /// <summary>The room.</summary>
        public required Surroundings Surroundings { get; init; }

        /// <summary>Temperature of everything at the start.</summary>
        public required Temperature Start { get; init; }

        /// <summary>Heat from below; null for none.</summary>
        public required BottomHeat? Preheat { get; init; }

        /// <summary>What the tools do, in order.</summary>
        public required IReadOnlyList<Touch> Touches { get; init; }

        /// <summary>Length of the run.</summary>
        public required Duration End { get; init; }

        /// <summary>What was assumed on reading, one sentence each.</summary>
        public required IReadOnlyList<string> Notes { get; init; }

        /// <summary>Composition of what is melted.</summary>
        public MassFractions Mix => Added is null ? Solder : Solder.MixedWith(Added, AddedShare.DecimalFractions);

        /// <summary>Mass of solder on the joint over the mass that was in it before.</summary>
        public double MassFactor => 1 / (1 - AddedShare.DecimalFractions);

        /// <summary>The problem to solve.</summary>
        /// <param name="solder">Heat content of the mix.</param>
        /// <param name="flow">Its flow temperature.</param>
        /// <returns>The problem.</returns>
        public JointProblem With(EnthalpyCurve solder, Temperature flow) => new()
        {
            Site = Site,
            Solder = solder,
            FlowTemperature = flow,
            Superheat = Superheat,
            Surroundings = Surroundings,
            Start = Start,
            Preheat = Preheat,
            Touches = Touches,
            End = End,
        };
    }
}
