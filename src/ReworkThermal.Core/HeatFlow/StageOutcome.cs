namespace ReworkThermal.Core.HeatFlow;

/// <summary>What came of solving one implicit stage.</summary>
internal enum StageOutcome
{
    /// <summary>Solved within its tolerance.</summary>
    Solved,

    /// <summary>Newton's method had not settled after its last round; a shorter step starts nearer to its solution.</summary>
    TooManyRounds,

    /// <summary>A number overflowed on the way.</summary>
    NotFinite,
}
