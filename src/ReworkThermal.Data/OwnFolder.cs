using ReworkThermal.Data.Store;

namespace ReworkThermal.Data;

/// <summary>Where the user's own alloys and profiles are.</summary>
public static class OwnFolder
{
    /// <summary>The place on this machine; null where the environment names no home folder.</summary>
    public static string? Default() => For(StorePlace.Platform, Environment.GetEnvironmentVariable);

    /// <summary>
    /// The place by platform: <c>$XDG_CONFIG_HOME/rework-thermal</c> or <c>~/.config/rework-thermal</c> (XDG Base Directory Specification
    /// 0.8), <c>%APPDATA%\ReworkThermal</c> on Windows, <c>~/Library/Application Support/ReworkThermal</c> on macOS.
    /// </summary>
    /// <param name="platform">The platform.</param>
    /// <param name="environment">Looks up an environment variable.</param>
    /// <returns>Path of the folder, which need not exist; null where the environment names no home folder.</returns>
    public static string? For(StorePlatform platform, Func<string, string?> environment)
    {
        ArgumentNullException.ThrowIfNull(environment);
        return platform switch
        {
            StorePlatform.Windows => Below(environment("APPDATA"), "ReworkThermal"),
            StorePlatform.MacOS => Below(environment("HOME"), "Library", "Application Support", "ReworkThermal"),
            _ => environment("XDG_CONFIG_HOME") is { Length: > 0 } config && config[0] == '/'
                ? Path.Combine(config, "rework-thermal")
                : Below(environment("HOME"), ".config", "rework-thermal"),
        };
    }

    private static string? Below(string? home, params string[] names) => string.IsNullOrEmpty(home) ? null : Path.Combine([home, .. names]);
}
