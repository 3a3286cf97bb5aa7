using ReworkThermal.App.Screens.Desks;

namespace ReworkThermal.App.Screens.State;

/// <summary>The mix: what is asked, and the last answer.</summary>
internal sealed record MixState
{
    /// <summary>Row that keys act on.</summary>
    internal int Row { get; init; }

    /// <summary>What is asked.</summary>
    internal MixQuestion Question { get; init; } = MixQuestion.Usual;

    /// <summary>Number of the question asked last.</summary>
    internal int Turn { get; init; }

    /// <summary>Number of the question that <see cref="Answer"/> is about.</summary>
    internal int AnsweredTurn { get; init; }

    /// <summary>The last answer, or null.</summary>
    internal MixAnswer? Answer { get; init; }
}
