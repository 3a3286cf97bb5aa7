namespace ReworkThermal.Core.Jobs;

/// <summary>Gives new jobs their identities. The program uses randomness, a test a list.</summary>
public interface IIdSource
{
    /// <summary>A fresh identity.</summary>
    /// <returns>An identity that no other job has.</returns>
    public JobId NewJob();
}
