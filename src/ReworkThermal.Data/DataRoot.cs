namespace ReworkThermal.Data;

/// <summary>Where the folders <c>alloys</c> and <c>profiles</c> are.</summary>
/// <param name="Folder">Folder that holds both.</param>
public sealed record DataRoot(string Folder)
{
    /// <summary>The data that came with the program, beside its binary, whatever the working directory is.</summary>
    public static DataRoot BesideProgram { get; } = new(AppContext.BaseDirectory);

    /// <summary>Folder of solders, dilution alloys and thermodynamic systems.</summary>
    public string Alloys => Path.Combine(Folder, "alloys");

    /// <summary>Folder of laminates, boards, joints, tools and limits.</summary>
    public string Profiles => Path.Combine(Folder, "profiles");
}
