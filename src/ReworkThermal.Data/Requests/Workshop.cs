using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Triage;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Limits;
using ReworkThermal.Data.Profiles;

namespace ReworkThermal.Data.Requests;

/// <summary>Everything a request may refer to by name.</summary>
/// <param name="Alloys">Solders and dilution alloys.</param>
/// <param name="Profiles">Boards, joints and tools.</param>
/// <param name="Limits">Damage limits and assumptions about earlier heat.</param>
/// <param name="Removals">Ways of taking solder out.</param>
/// <param name="Wire">Flux-cored wire.</param>
/// <param name="Planning">Limits of a plan that a request need not repeat.</param>
/// <param name="Scatter">How far one bench differs from the next.</param>
/// <param name="Effort">Bench time of a repair.</param>
public sealed record Workshop(
    AlloyShelf Alloys,
    ProfileLibrary Profiles,
    DamageLimits Limits,
    IReadOnlyList<RemovalMethod> Removals,
    WireStock Wire,
    PlanningDefaults Planning,
    BenchScatter Scatter,
    BenchEffort Effort)
{
    /// <summary>Reads all data folders.</summary>
    /// <param name="root">Where they are.</param>
    /// <returns>The workshop.</returns>
    /// <exception cref="DataFileException">A file is missing or not in order.</exception>
    public static Workshop Load(DataRoot root)
    {
        ArgumentNullException.ThrowIfNull(root);
        ProfileLibrary profiles = ProfileLibrary.Load(root);
        DamageLimits limits = LimitsFolder.Load(root);
        RequireKnownClasses(profiles, limits);
        return new Workshop(
            AlloyShelf.Load(root),
            profiles,
            limits,
            RemovalFiles.Load(root),
            WireStock.Read(root.File("alloys/wire.toml")),
            PlanningDefaults.Read(root.File("profiles/limits/planning.toml")),
            ScatterFile.Read(root.File("profiles/limits/uncertainty.toml")),
            EffortFile.Read(root.File("profiles/limits/triage.toml")));
    }

    private static void RequireKnownClasses(ProfileLibrary profiles, DamageLimits limits)
    {
        List<DataFileProblem> problems = [.. profiles.Laminates
            .Where(l => limits.LaminateOrNull(l.Value.ClassName) is null)
            .Select(l => new DataFileProblem(
                $"profiles/laminates/{l.Key}.toml",
                0,
                "class",
                $"'{BadValue.Shown(l.Value.ClassName)}' is not a class of limits/laminate-classes.toml; known: {string.Join(", ", limits.Laminates.Select(c => c.Name))}"))];
        if (problems.Count > 0)
        {
            throw new DataFileException(problems);
        }
    }
}
