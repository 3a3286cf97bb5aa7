namespace ReworkThermal.Core.Mixing;

/// <summary>What came of a <see cref="CleaningQuestion"/>.</summary>
public abstract record CleaningAnswer
{
    private CleaningAnswer()
    {
    }

    /// <summary>The joint was followed through its passes.</summary>
    /// <param name="ByPasses">The final joint after 1, 2, ... passes with the central removal share.</param>
    /// <param name="Enough">Passes that make it clean with the central removal share; null when the most considered are not enough.</param>
    /// <param name="EnoughAtBest">The same with the highest removal share.</param>
    /// <param name="EnoughAtWorst">The same with the lowest removal share.</param>
    public sealed record Followed(IReadOnlyList<FinalJoint> ByPasses, int? Enough, int? EnoughAtBest, int? EnoughAtWorst) : CleaningAnswer;

    /// <summary>The melting of a final joint could not be computed.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record Failed(string Reason) : CleaningAnswer;
}
