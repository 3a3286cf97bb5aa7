namespace ReworkThermal.Core.Planning;

/// <summary>What a plan is best at. Plans of one answer differ in kind.</summary>
public enum PlanKind
{
    /// <summary>Uses the smallest share of the pad's heat budget.</summary>
    LeastHeat,

    /// <summary>The least heat without bringing lead to the joint.</summary>
    NoLead,

    /// <summary>Fewest passes, then least added alloy.</summary>
    LeastEffort,

    /// <summary>The least heat without a preheater.</summary>
    NoPreheat,

    /// <summary>Nothing is added to the joint's own solder.</summary>
    NothingAdded,

    /// <summary>The next least heat with another alloy.</summary>
    OtherAlloy,
}
