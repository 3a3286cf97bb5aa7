namespace ReworkThermal.Data.Toml;

/// <summary>A value in a TOML document, with the line it stands on.</summary>
/// <param name="Line">Line number from 1.</param>
internal abstract record TomlValue(int Line)
{
    /// <summary>A piece of text.</summary>
    internal sealed record Text(int Line, string Value) : TomlValue(Line);

    /// <summary>An integer or floating-point number; may be NaN or infinite as TOML allows.</summary>
    internal sealed record Number(int Line, double Value) : TomlValue(Line);

    /// <summary>True or false.</summary>
    internal sealed record Truth(int Line, bool Value) : TomlValue(Line);

    /// <summary>A date or time; no field holds one.</summary>
    internal sealed record Moment(int Line) : TomlValue(Line);

    /// <summary>A list of values, or an array of tables.</summary>
    internal sealed record List(int Line, List<TomlValue> Items) : TomlValue(Line);

    /// <summary>A table.</summary>
    internal sealed record Table(int Line, Dictionary<string, TomlValue> Fields) : TomlValue(Line);
}
