using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Calibrations;

/// <summary>Where calibrations are when nobody names a folder.</summary>
public static class CalibrationPlace
{
    /// <summary>The folder <c>calibrations</c> beside the job store.</summary>
    /// <returns>Full path; it need not exist.</returns>
    /// <exception cref="Core.Jobs.JobStoreException">The environment names no home folder.</exception>
    public static string Default() => Path.Combine(Path.GetDirectoryName(StorePlace.Default())!, "calibrations");
}
