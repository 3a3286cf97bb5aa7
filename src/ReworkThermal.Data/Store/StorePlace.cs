using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>Where the job store is when nobody names a file.</summary>
public static class StorePlace
{
    private const string FileName = "jobs.db";

    /// <summary>The platform of this machine.</summary>
    internal static StorePlatform Platform { get; } =
        OperatingSystem.IsWindows() ? StorePlatform.Windows : OperatingSystem.IsMacOS() ? StorePlatform.MacOS : StorePlatform.Unix;

    /// <summary>The default place on this machine.</summary>
    /// <returns>Full path of the file; it need not exist.</returns>
    /// <exception cref="JobStoreException">The environment names no home folder.</exception>
    public static string Default() => For(Platform, Environment.GetEnvironmentVariable);

    /// <summary>
    /// The default place by platform: <c>$XDG_DATA_HOME</c> or <c>~/.local/share</c> (XDG Base Directory Specification 0.8) on Linux
    /// and other Unix systems, <c>%LOCALAPPDATA%</c> on Windows, <c>~/Library/Application Support</c> on macOS.
    /// </summary>
    /// <param name="platform">The platform.</param>
    /// <param name="environment">Looks up an environment variable.</param>
    /// <returns>Path of the file.</returns>
    /// <exception cref="JobStoreException">The environment names no home folder.</exception>
    public static string For(StorePlatform platform, Func<string, string?> environment)
    {
        ArgumentNullException.ThrowIfNull(environment);
        return platform switch
        {
            StorePlatform.Windows => Path.Combine(Required(environment, "LOCALAPPDATA"), "ReworkThermal", FileName),
            StorePlatform.MacOS => Path.Combine(Required(environment, "HOME"), "Library", "Application Support", "ReworkThermal", FileName),
            _ => Path.Combine(UnixData(environment), "rework-thermal", FileName),
        };
    }

    // The specification says that a relative path in the variable is to be ignored.
    private static string UnixData(Func<string, string?> environment) =>
        environment("XDG_DATA_HOME") is { Length: > 0 } data && data[0] == '/'
            ? data
            : Path.Combine(Required(environment, "HOME"), ".local", "share");

    private static string Required(Func<string, string?> environment, string name) =>
        environment(name) is { Length: > 0 } value
            ? value
            : throw new JobStoreException(
                StoreTrouble.Unreadable,
                $"There is no default place for the job store: the environment variable {name} is not set. Choose a file with --store.");
}
