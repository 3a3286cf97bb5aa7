namespace ReworkThermal.App.Screens.Desks;

/// <summary>What came of writing a job's record.</summary>
internal abstract record RecordAnswer
{
    private RecordAnswer()
    {
    }

    /// <summary>It is in these files.</summary>
    internal sealed record Written(IReadOnlyList<string> Paths) : RecordAnswer;

    /// <summary>These files are there already; nothing was written.</summary>
    internal sealed record Exists(IReadOnlyList<string> Paths) : RecordAnswer;

    /// <summary>It could not be written.</summary>
    internal sealed record Failed(string Reason) : RecordAnswer;
}
