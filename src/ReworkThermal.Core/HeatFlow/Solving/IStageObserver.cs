namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>Reads values off the system at every stage; keeps them once the step is accepted.</summary>
internal interface IStageObserver
{
    /// <summary>Reads the values of the state the system holds.</summary>
    /// <param name="seconds">Time of the state [s].</param>
    /// <param name="bodyK">Temperatures of the lumped bodies [K].</param>
    public void Take(double seconds, ReadOnlySpan<double> bodyK);

    /// <summary>Keeps what was taken since the last call.</summary>
    public void Commit();

    /// <summary>Forgets what was taken since the last call.</summary>
    public void Discard();
}
