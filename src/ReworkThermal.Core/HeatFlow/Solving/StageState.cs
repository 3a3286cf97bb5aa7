namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>What a march keeps of one stage.</summary>
/// <param name="length">Length of the cell vectors.</param>
/// <param name="bodies">Number of lumped bodies.</param>
internal sealed class StageState(int length, int bodies)
{
    /// <summary>Enthalpy of each cell [J].</summary>
    internal double[] Enthalpy { get; } = new double[length];

    /// <summary>Heat flow into each cell [W].</summary>
    internal double[] Rates { get; } = new double[length];

    /// <summary>Temperature of each cell [K].</summary>
    internal double[] CellK { get; } = new double[length];

    /// <summary>Temperature of each lumped body [K].</summary>
    internal double[] BodyK { get; } = new double[bodies];

    /// <summary>Heat flow into each lumped body [W].</summary>
    internal double[] BodyRates { get; } = new double[bodies];
}

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
