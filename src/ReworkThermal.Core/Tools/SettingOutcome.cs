namespace ReworkThermal.Core.Tools;

/// <summary>What came of turning a setting into a boundary condition.</summary>
/// <typeparam name="T">The boundary condition.</typeparam>
public abstract record SettingOutcome<T>
{
    private SettingOutcome()
    {
    }

    /// <summary>The setting can be used.</summary>
    /// <param name="Source">The boundary condition.</param>
    /// <param name="Notes">What was assumed, one sentence each.</param>
    public sealed record Ready(T Source, IReadOnlyList<string> Notes) : SettingOutcome<T>;

    /// <summary>The setting cannot be used.</summary>
    /// <param name="Reason">One sentence: what is wrong and what would be right.</param>
    public sealed record Refused(string Reason) : SettingOutcome<T>;
}
