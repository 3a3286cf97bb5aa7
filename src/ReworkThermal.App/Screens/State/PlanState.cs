using System.Collections.Immutable;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Reports.Plans;

namespace ReworkThermal.App.Screens.State;

/// <summary>The plan: the request, the run, the answer.</summary>
internal sealed record PlanState
{
    /// <summary>Row of the request that keys act on.</summary>
    internal int Row { get; init; }

    /// <summary>The request.</summary>
    internal PlanForm Form { get; init; } = PlanForm.Usual;

    /// <summary>What is wrong with the request, by field.</summary>
    internal ImmutableDictionary<PlanField, string> Complaints { get; init; } = ImmutableDictionary<PlanField, string>.Empty;

    /// <summary>Number of the run asked for last.</summary>
    internal int Turn { get; init; }

    /// <summary>Progress while a run goes on, else null.</summary>
    internal PlanProgress? Running { get; init; }

    /// <summary>Progress while the plans of the answer are sampled, else null.</summary>
    internal PlanProgress? Sampling { get; init; }

    /// <summary>The answer, or null.</summary>
    internal PlanReport? Report { get; init; }

    /// <summary>Timed touches that the bench of the answer was learned from.</summary>
    internal int LearnedFrom { get; init; }

    /// <summary>Whether the answer is shown instead of the request.</summary>
    internal bool ShowsAnswer { get; init; }

    /// <summary>Plan that keys act on.</summary>
    internal int Chosen { get; init; }

    /// <summary>First line of the details shown.</summary>
    internal int Scroll { get; init; }
}
