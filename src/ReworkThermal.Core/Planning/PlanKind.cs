namespace ReworkThermal.Core.Planning;

/// <summary>What a plan is best at. Plans of one answer differ in kind.</summary>
public enum PlanKind
{
    /// <summary>Uses the smallest share of the pad's heat budget: few melts count as much as low temperatures.</summary>
    SmallestBudget,

    /// <summary>Is easiest on the laminate, whatever the number of melts: the gauge with the best support in the literature.</summary>
    CoolestPad,

    /// <summary>Easiest on the laminate without bringing lead to the joint.</summary>
    NoLead,

    /// <summary>Leaves the most time between flow and stop: for a bench or a board that is not known well.</summary>
    Surest,

    /// <summary>Fewest passes, then least added alloy.</summary>
    LeastEffort,

    /// <summary>Easiest on the laminate without a preheater.</summary>
    NoPreheat,

    /// <summary>Easiest on the laminate with nothing added to the joint's own solder.</summary>
    NothingAdded,

    /// <summary>The next easiest on the laminate with another alloy.</summary>
    OtherAlloy,
}
