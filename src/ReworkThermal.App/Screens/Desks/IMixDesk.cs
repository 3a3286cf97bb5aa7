namespace ReworkThermal.App.Screens.Desks;

/// <summary>Reckons a mix. Called on a background thread; a question that is overtaken is cancelled.</summary>
internal interface IMixDesk
{
    /// <summary>Answers a question.</summary>
    public MixAnswer Reckon(MixQuestion question, CancellationToken cancellation);
}
