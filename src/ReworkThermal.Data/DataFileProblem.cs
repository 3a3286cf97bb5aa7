namespace ReworkThermal.Data;

/// <summary>One thing that is wrong with a data file.</summary>
/// <param name="File">Path of the file as the user gave it.</param>
/// <param name="Line">Line number from 1, or 0 when the problem belongs to no line (a missing file).</param>
/// <param name="Field">Field name with its tables, such as <c>board.thickness</c>; empty when the problem belongs to no field.</param>
/// <param name="Rule">What is wrong and what would be right, as one clause.</param>
public sealed record DataFileProblem(string File, int Line, string Field, string Rule)
{
    /// <summary>Field name with its tables; a long one is cut.</summary>
    public string Field { get; } = BadValue.Shown(Field);

    /// <summary>What is wrong and what would be right; a clause that goes on and on is cut.</summary>
    public string Rule { get; } = Rule.Length <= MostRule ? Rule : Rule[..MostRule] + "...";

    private const int MostRule = 700;

    /// <summary>One sentence with place and rule.</summary>
    /// <returns>For example <c>case.toml, line 12, board.thickness: must be above 0 mm, got -1.6 mm</c>.</returns>
    public override string ToString()
    {
        string place = Line > 0 ? $"{File}, line {Line.ToString(System.Globalization.CultureInfo.InvariantCulture)}" : File;
        return Field.Length > 0 ? $"{place}, {Field}: {Rule}" : $"{place}: {Rule}";
    }
}
