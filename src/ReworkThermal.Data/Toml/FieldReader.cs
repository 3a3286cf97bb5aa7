using System.Globalization;
using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Data.Toml;

/// <summary>
/// Reads the fields of one TOML table by name and type. Every miss is a <see cref="DataFileException"/> with file, line, field and
/// what would be right. Call <see cref="Finish"/> when all known fields are read: a field nobody asked for is an error, so that a
/// misspelt name cannot be silently ignored.
/// </summary>
internal sealed class FieldReader
{
    private readonly string _file;
    private readonly TomlValue.Table _table;
    private readonly string _path;
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);
    private readonly List<FieldReader> _children = [];

    private FieldReader(string file, TomlValue.Table table, string path)
    {
        _file = file;
        _table = table;
        _path = path;
    }

    /// <summary>Names of all fields, in file order.</summary>
    internal IEnumerable<string> Names => _table.Fields.Keys;

    /// <summary>Opens a file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="shownAs">Name for messages; the path itself by default.</param>
    /// <returns>A reader on the root table.</returns>
    internal static FieldReader Open(string path, string? shownAs = null)
    {
        string text = InputFile.ReadText(path, InputFile.MostData, shownAs);
        string file = shownAs ?? path;
        return new FieldReader(file, TomlTree.Parse(text, file), string.Empty);
    }

    /// <summary>Whether a field is present.</summary>
    internal bool Has(string name) => _table.Fields.ContainsKey(name);

    /// <summary>Required text, not empty.</summary>
    internal string Text(string name)
    {
        string text = Require(name) is TomlValue.Text { Value: string value } ? value : throw Wrong(name, "must be text in quotes");
        return text.Trim().Length > 0 ? text : throw Wrong(name, "must not be empty");
    }

    /// <summary>Optional text.</summary>
    internal string? TextOrNull(string name) => Has(name) ? Text(name) : null;

    /// <summary>Required text that must be one of a closed list.</summary>
    internal T OneOf<T>(string name, IReadOnlyDictionary<string, T> choices)
    {
        string text = Text(name);
        return choices.TryGetValue(text, out T? value)
            ? value
            : throw Wrong(name, $"must be one of {string.Join(", ", choices.Keys)}; got '{BadValue.Shown(text)}'");
    }

    /// <summary>Required word of a closed list.</summary>
    internal T OneOf<T>(string name)
        where T : struct, Enum => OneOf(name, Vocabulary.Of<T>());

    /// <summary>Optional word of a closed list.</summary>
    internal T? OneOfOrNull<T>(string name)
        where T : struct, Enum => Has(name) ? OneOf<T>(name) : null;

    /// <summary>Required true or false.</summary>
    internal bool Truth(string name) => Require(name) is TomlValue.Truth truth ? truth.Value : throw Wrong(name, "must be true or false");

    /// <summary>Required finite number within limits (inclusive).</summary>
    internal double Number(string name, double least = double.NegativeInfinity, double most = double.PositiveInfinity) =>
        Check(name, Require(name), least, most);

    /// <summary>Required whole number within limits (inclusive).</summary>
    internal int Whole(string name, int least, int most)
    {
        double number = Number(name, least, most);
        return number == Math.Floor(number) ? (int)number : throw Wrong(name, "must be a whole number");
    }

    /// <summary>Required list of finite numbers.</summary>
    internal IReadOnlyList<double> Numbers(string name)
    {
        TomlValue.List list = RequireList(name);
        return [.. list.Items.Select(item => Check(name, item, double.NegativeInfinity, double.PositiveInfinity))];
    }

    /// <summary>Required list of texts.</summary>
    internal IReadOnlyList<string> Texts(string name)
    {
        TomlValue.List list = RequireList(name);
        return [.. list.Items.Select(item => item is TomlValue.Text text ? text.Value : throw Wrong(name, "must be a list of texts in quotes"))];
    }

    /// <summary>Required quantity with its unit, such as "1.6 mm", within limits (inclusive).</summary>
    internal TQuantity Quantity<TQuantity, TUnit>(string name, Quantity<TQuantity, TUnit> kind, TQuantity? least = null, TQuantity? most = null)
        where TQuantity : struct, IComparable<TQuantity>
        where TUnit : struct, Enum
    {
        if (Require(name) is not TomlValue.Text text || !kind.TryParse(text.Value, out TQuantity value))
        {
            throw Wrong(name, $"must be {kind.Words} in quotes, a number and one of the units {kind.UnitWords}{Got(name)}");
        }

        if (least is { } low && value.CompareTo(low) < 0)
        {
            throw Wrong(name, $"must be at least {Shown(low)}{Got(name)}");
        }

        if (most is { } high && value.CompareTo(high) > 0)
        {
            throw Wrong(name, $"must be at most {Shown(high)}{Got(name)}");
        }

        return value;
    }

    /// <summary>Optional quantity with its unit, within limits (inclusive).</summary>
    internal TQuantity? QuantityOrNull<TQuantity, TUnit>(string name, Quantity<TQuantity, TUnit> kind, TQuantity? least = null, TQuantity? most = null)
        where TQuantity : struct, IComparable<TQuantity>
        where TUnit : struct, Enum => Has(name) ? Quantity(name, kind, least, most) : null;

    /// <summary>Required table.</summary>
    internal FieldReader Table(string name) =>
        Require(name) is TomlValue.Table table ? Child(table, name) : throw Wrong(name, "must be a table");

    /// <summary>Optional table.</summary>
    internal FieldReader? TableOrNull(string name) => Has(name) ? Table(name) : null;

    /// <summary>Array of tables; empty when absent.</summary>
    internal IReadOnlyList<FieldReader> Tables(string name)
    {
        if (!Has(name))
        {
            return [];
        }

        TomlValue.List list = RequireList(name);
        List<FieldReader> readers = [];
        for (int i = 0; i < list.Items.Count; i++)
        {
            readers.Add(list.Items[i] is TomlValue.Table table
                ? Child(table, string.Create(CultureInfo.InvariantCulture, $"{name}[{i + 1}]"))
                : throw Wrong(name, "must be a list of tables"));
        }

        return readers;
    }

    /// <summary>Reads the fields <c>source</c> and <c>mark</c> of this table.</summary>
    internal Provenance Provenance() => new(Text("source"), OneOf<EvidenceMark>("mark"));

    /// <summary>
    /// Required estimate: a table with <c>value</c>, <c>low</c>, <c>high</c> (same unit kind), <c>source</c> and <c>mark</c>.
    /// </summary>
    internal Estimate<TQuantity> Estimate<TQuantity, TUnit>(string name, Quantity<TQuantity, TUnit> kind, TQuantity? least = null, TQuantity? most = null)
        where TQuantity : struct, IComparable<TQuantity>
        where TUnit : struct, Enum
    {
        FieldReader table = Table(name);
        TQuantity central = table.Quantity("value", kind, least, most);
        TQuantity low = table.Quantity("low", kind, least, most);
        TQuantity high = table.Quantity("high", kind, least, most);
        return table.Ordered(central, low, high);
    }

    /// <summary>Required estimate of a plain number, written like the quantity form but without units.</summary>
    internal Estimate<double> Estimate(string name, double least = double.NegativeInfinity, double most = double.PositiveInfinity)
    {
        FieldReader table = Table(name);
        return table.Ordered(table.Number("value", least, most), table.Number("low", least, most), table.Number("high", least, most));
    }

    /// <summary>Reports fields that nobody read, here and in every table opened from here.</summary>
    internal void Finish()
    {
        List<DataFileProblem> problems = [];
        CollectUnread(problems);
        if (problems.Count > 0)
        {
            throw new DataFileException(problems);
        }
    }

    /// <summary>An exception that blames a field.</summary>
    internal DataFileException Wrong(string name, string rule) => new([new DataFileProblem(_file, LineOf(name), PathOf(name), rule)]);

    /// <summary>An exception that blames this table as a whole.</summary>
    internal DataFileException Wrong(string rule) => new([new DataFileProblem(_file, _table.Line, _path, rule)]);

    private Estimate<T> Ordered<T>(T central, T low, T high)
        where T : struct, IComparable<T>
    {
        return low.CompareTo(central) <= 0 && central.CompareTo(high) <= 0
            ? new Estimate<T>(central, low, high, Provenance())
            : throw Wrong("value", "must lie between low and high");
    }

    // One reader a table, so that fields may be read in several goes.
    private FieldReader Child(TomlValue.Table table, string name)
    {
        FieldReader? child = _children.Find(c => ReferenceEquals(c._table, table));
        if (child is null)
        {
            child = new FieldReader(_file, table, PathOf(name));
            _children.Add(child);
        }

        return child;
    }

    private void CollectUnread(List<DataFileProblem> problems)
    {
        foreach ((string name, TomlValue value) in _table.Fields)
        {
            if (!_asked.Contains(name))
            {
                problems.Add(new DataFileProblem(_file, value.Line, PathOf(name), $"is not a field of this table; known here: {string.Join(", ", _asked)}"));
            }
        }

        foreach (FieldReader child in _children)
        {
            child.CollectUnread(problems);
        }
    }

    private TomlValue Require(string name)
    {
        _asked.Add(name);
        return _table.Fields.TryGetValue(name, out TomlValue? value)
            ? value
            : throw new DataFileException([new DataFileProblem(_file, _table.Line, PathOf(name), "is missing")]);
    }

    private TomlValue.List RequireList(string name) => Require(name) as TomlValue.List ?? throw Wrong(name, "must be a list in square brackets");

    private double Check(string name, TomlValue value, double least, double most)
    {
        if (value is not TomlValue.Number number)
        {
            throw Wrong(name, "must be a number without quotes");
        }

        if (!double.IsFinite(number.Value))
        {
            throw Wrong(name, "must be a finite number");
        }

        return number.Value >= least && number.Value <= most
            ? number.Value
            : throw Wrong(name, string.Create(CultureInfo.InvariantCulture, $"must lie between {least} and {most}; got {number.Value}"));
    }

    // Line of a field, or of the table when the field is absent.
    private int LineOf(string name) => _table.Fields.TryGetValue(name, out TomlValue? value) ? value.Line : _table.Line;

    private string Got(string name) => _table.Fields[name] is TomlValue.Text text ? $"; got '{BadValue.Shown(text.Value)}'" : string.Empty;

    private string PathOf(string name) => _path.Length > 0 ? _path + "." + name : name;

    private static string Shown<T>(T value) => value is IFormattable formattable
        ? formattable.ToString(null, CultureInfo.InvariantCulture)
        : value?.ToString() ?? string.Empty;
}
