using System.Runtime.InteropServices;

namespace ReworkThermal.App.Screens.Running;

/// <summary>What the toolkit does not look after: whether the terminal is still there, and its raw mode after the program was stopped.</summary>
internal static partial class Tty
{
    private const int StandardInput = 0;
    private const int AtOnce = 0;

    // struct termios has 44 to 72 bytes, depending on the system; it is handed on unread.
    private const int TermiosRoom = 256;

    /// <summary>Whether keys can still come. After the terminal has gone the toolkit would spin on an input at its end.</summary>
    internal static bool IsThere => OperatingSystem.IsWindows() || IsATty(StandardInput) != 0;

    /// <summary>
    /// Sets raw mode, in which every key comes at once and none is a signal. The shell that stopped or continued the program, and the
    /// runtime itself on SIGCONT, set the terminal as they remember it, and lines would be read until Enter. Nothing while another
    /// program has the terminal: setting it would stop this one.
    /// </summary>
    internal static void MakeRaw()
    {
        if (OperatingSystem.IsWindows() || GetForegroundGroup(StandardInput) != GetOwnGroup())
        {
            return;
        }

        Span<byte> settings = stackalloc byte[TermiosRoom];
        if (GetSettings(StandardInput, settings) == 0)
        {
            SetRaw(settings);
            _ = SetSettings(StandardInput, AtOnce, settings);
        }
    }

    [LibraryImport("libc", EntryPoint = "tcgetattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int GetSettings(int descriptor, Span<byte> settings);

    [LibraryImport("libc", EntryPoint = "tcsetattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int SetSettings(int descriptor, int when, Span<byte> settings);

    [LibraryImport("libc", EntryPoint = "cfmakeraw")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial void SetRaw(Span<byte> settings);

    [LibraryImport("libc", EntryPoint = "tcgetpgrp")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int GetForegroundGroup(int descriptor);

    [LibraryImport("libc", EntryPoint = "getpgrp")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int GetOwnGroup();

    [LibraryImport("libc", EntryPoint = "isatty")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int IsATty(int descriptor);
}
