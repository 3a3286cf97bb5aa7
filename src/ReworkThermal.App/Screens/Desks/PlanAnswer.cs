using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Reports.Plans;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Answer to a plan request.</summary>
internal abstract record PlanAnswer
{
    private PlanAnswer()
    {
    }

    /// <summary>Plans, or none with the reasons.</summary>
    /// <param name="Report">The plans.</param>
    /// <param name="LearnedFrom">Timed touches that the bench was learned from; zero when it is that of the profiles.</param>
    internal sealed record Answered(PlanReport Report, int LearnedFrom) : PlanAnswer;

    /// <summary>A field cannot be used.</summary>
    internal sealed record Refused(PlanField Field, string Reason) : PlanAnswer;

    /// <summary>There is nothing to answer with.</summary>
    internal sealed record NotAvailable(string Reason) : PlanAnswer;
}
