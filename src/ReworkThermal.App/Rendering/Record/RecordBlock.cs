namespace ReworkThermal.App.Rendering.Record;

/// <summary>A piece of a record, in the order of reading. What a person typed in it is neutralised already, but not yet escaped.</summary>
internal abstract record RecordBlock
{
    private RecordBlock()
    {
    }

    /// <summary>Running text.</summary>
    internal sealed record Prose(string Text) : RecordBlock;

    /// <summary>Text that must be there but is seldom read.</summary>
    internal sealed record SmallPrint(string Text) : RecordBlock;

    /// <summary>Text that must not be overlooked.</summary>
    internal sealed record Warning(string Text) : RecordBlock;

    /// <summary>A list of sentences.</summary>
    internal sealed record Items(IReadOnlyList<string> Sentences) : RecordBlock;

    /// <summary>A table; a heading that starts with '>' is set to the right.</summary>
    internal sealed record Grid(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : RecordBlock;

    /// <summary>A picture.</summary>
    /// <param name="Svg">The picture, complete and safe.</param>
    /// <param name="Description">What it shows, in words, for those who do not see it.</param>
    internal sealed record Figure(string Svg, string Description) : RecordBlock;
}
