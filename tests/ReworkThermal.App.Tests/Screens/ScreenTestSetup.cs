using System.Runtime.CompilerServices;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>Lets the toolkit run without a terminal.</summary>
internal static class ScreenTestSetup
{
#pragma warning disable CA2255 // The start-up hook of a test assembly is what this is for.
    [ModuleInitializer]
    internal static void Prepare()
    {
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");

        // Every application parks its input loop on a pool thread; few cores would make the next one wait for a thread.
        _ = ThreadPool.SetMinThreads(32, 32);
    }
#pragma warning restore CA2255
}
