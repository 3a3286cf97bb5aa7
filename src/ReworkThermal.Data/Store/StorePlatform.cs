namespace ReworkThermal.Data.Store;

/// <summary>Families of operating systems that keep a user's data in different places.</summary>
public enum StorePlatform
{
    /// <summary>Linux and other Unix systems.</summary>
    Unix,

    /// <summary>Microsoft Windows.</summary>
    Windows,

    /// <summary>Apple macOS.</summary>
    MacOS,
}
