using System.Diagnostics;
using System.Globalization;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Tests.Store;

/// <summary>A second process that writes to a store.</summary>
internal static class StoreWriterProcess
{
    internal static Process Start(string store, JobId job, PadId pad, int touches) => Start(store, job, "touches", pad.Value, touches);

    /// <summary>Adds something else; the words are those of the program.</summary>
    internal static Process Start(string store, JobId job, string what, string from, int count)
    {
        string host = Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";
        ProcessStartInfo start = new(host, ["exec", Path.Combine(AppContext.BaseDirectory, "ReworkThermal.StoreWriter.dll"), store, job.Value, what, from, count.ToString(CultureInfo.InvariantCulture)])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        return Process.Start(start)!;
    }
}
