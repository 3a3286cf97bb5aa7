using ReworkThermal.App.Screens.State;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Answer about a mix.</summary>
internal abstract record MixAnswer
{
    private MixAnswer()
    {
    }

    /// <summary>Reckoned.</summary>
    internal sealed record Reckoned(MixFigures Figures) : MixAnswer;

    /// <summary>A line of the question cannot be used.</summary>
    internal sealed record Refused(MixField Field, string Reason) : MixAnswer;

    /// <summary>The question is in order, but there is no answer.</summary>
    internal sealed record NoAnswer(string Reason) : MixAnswer;
}
