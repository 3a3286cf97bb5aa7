using System.Diagnostics;
using System.Globalization;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Tests.Store;

/// <summary>A second process that writes to a store.</summary>
internal static class StoreWriterProcess
{
    internal static Process Start(string store, JobId job, PadId pad, int touches)
    {
        string host = Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";
        ProcessStartInfo start = new(host, ["exec", Path.Combine(AppContext.BaseDirectory, "ReworkThermal.StoreWriter.dll"), store, job.Value, pad.Value, touches.ToString(CultureInfo.InvariantCulture)])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        return Process.Start(start)!;
    }
}
