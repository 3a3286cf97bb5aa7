namespace ReworkThermal.App.Screens.State;

/// <summary>The five places of the program, by the digit that leads there.</summary>
internal enum Place
{
    /// <summary>The job and its pins.</summary>
    Job = 1,

    /// <summary>What the mixed solder does.</summary>
    Mix = 2,

    /// <summary>How to do the joint.</summary>
    Plan = 3,

    /// <summary>The bench clock.</summary>
    Clock = 4,

    /// <summary>What happened.</summary>
    Record = 5,
}
