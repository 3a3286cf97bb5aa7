using System.Globalization;
using System.Text.Json;
using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Data.Store;

/// <summary>
/// Reads the fields of one JSON object by name and type. Every miss is a <see cref="RecordFormatException"/> that names the field;
/// <see cref="Finish"/> refuses fields nobody asked for.
/// </summary>
internal sealed class RecordReader
{
    private readonly JsonElement _object;
    private readonly string _path;
    private int _asked;

    internal RecordReader(JsonElement element, string path)
    {
        _path = path;
        _object = element.ValueKind == JsonValueKind.Object ? element : throw new RecordFormatException($"{Shown(path)} must be an object");
    }

    internal string Text(string name) => TextOrNull(name) ?? throw Missing(name);

    internal string? TextOrNull(string name) =>
        !Get(name, out JsonElement value) ? null
        : value.ValueKind == JsonValueKind.String ? Characters(value, name)
        : throw Wrong(name, "must be text");

    private string Characters(JsonElement value, string name)
    {
        try
        {
            return value.GetString()!;
        }
        catch (InvalidOperationException)
        {
            // JSON may hold half of a surrogate pair as an escape; that is no text.
            throw Wrong(name, "holds an escape that is no character");
        }
    }

    internal double Number(string name) => NumberOrNull(name) ?? throw Missing(name);

    internal double? NumberOrNull(string name) => Get(name, out JsonElement value) ? NumberOf(value, name) : null;

    internal int Whole(string name) => WholeOrNull(name) ?? throw Missing(name);

    internal int? WholeOrNull(string name) =>
        !Get(name, out JsonElement value) ? null
        : value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out int number) ? number
        : throw Wrong(name, "must be a whole number");

    internal bool Truth(string name) => TruthOrNull(name) ?? throw Missing(name);

    internal bool? TruthOrNull(string name) =>
        !Get(name, out JsonElement value) ? null
        : value.ValueKind is JsonValueKind.True or JsonValueKind.False ? value.GetBoolean()
        : throw Wrong(name, "must be true or false");

    internal DateTimeOffset Time(string name) =>
        RecordTime.Read(Text(name)) ?? throw Wrong(name, "must be a time such as 2026-01-31T08:30:00.000Z");

    internal T Word<T>(string name)
        where T : struct, Enum => WordOrNull<T>(name) ?? throw Missing(name);

    internal T? WordOrNull<T>(string name)
        where T : struct, Enum =>
        TextOrNull(name) is not { } word ? null
        : Vocabulary.Of<T>().TryGetValue(word, out T member) ? member
        : throw Wrong(name, $"must be one of {string.Join(", ", Vocabulary.Of<T>().Keys)}");

    internal RecordReader? ObjectOrNull(string name) => Get(name, out JsonElement value) ? new RecordReader(value, PathOf(name)) : null;

    internal List<T> Objects<T>(string name, Func<RecordReader, T> read)
    {
        List<T> items = [];
        foreach (JsonElement item in Array(name).EnumerateArray())
        {
            RecordReader reader = new(item, string.Create(CultureInfo.InvariantCulture, $"{PathOf(name)}[{items.Count}]"));
            items.Add(read(reader));
            reader.Finish();
        }

        return items;
    }

    internal List<string> Texts(string name) =>
        [.. Array(name).EnumerateArray().Select(i => i.ValueKind == JsonValueKind.String ? Characters(i, name) : throw Wrong(name, "must be a list of texts"))];

    internal double[] Numbers(string name) => [.. Array(name).EnumerateArray().Select(i => NumberOf(i, name))];

    internal void Finish()
    {
        int there = 0;
        foreach (JsonProperty _ in _object.EnumerateObject())
        {
            there++;
        }

        if (there != _asked)
        {
            throw new RecordFormatException($"{Shown(_path)} has a field that is not known here, or a field twice");
        }
    }

    internal RecordFormatException Wrong(string name, string rule) => new($"{PathOf(name)} {rule}");

    /// <summary>What a constructor refused, with the place of this object.</summary>
    internal RecordFormatException Wrong(ArgumentException problem) => new($"{Shown(_path)}: {problem.Message}", problem);

    private RecordFormatException Missing(string name) => Wrong(name, "is missing");

    private JsonElement Array(string name) =>
        !Get(name, out JsonElement value) ? throw Missing(name)
        : value.ValueKind == JsonValueKind.Array ? value
        : throw Wrong(name, "must be a list");

    private double NumberOf(JsonElement value, string name) =>
        value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out double number) && double.IsFinite(number)
            ? number
            : throw Wrong(name, "must be a finite number");

    private bool Get(string name, out JsonElement value)
    {
        bool there = _object.TryGetProperty(name, out value);
        if (there)
        {
            _asked++;
        }

        return there;
    }

    private string PathOf(string name) => _path.Length > 0 ? $"{_path}.{name}" : name;

    private static string Shown(string path) => path.Length > 0 ? path : "the record";
}
