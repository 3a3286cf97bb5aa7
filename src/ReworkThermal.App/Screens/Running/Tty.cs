using System.Runtime.InteropServices;

namespace ReworkThermal.App.Screens.Running;

/// <summary>Whether the terminal is still there.</summary>
internal static partial class Tty
{
    private const int StandardInput = 0;

    /// <summary>Whether keys can still come. After the terminal has gone the toolkit would spin on an input at its end.</summary>
    internal static bool IsThere => OperatingSystem.IsWindows() || IsATty(StandardInput) != 0;

    [LibraryImport("libc", EntryPoint = "isatty")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int IsATty(int descriptor);
}
