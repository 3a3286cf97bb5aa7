using System.Text.Json;
using System.Text.Json.Serialization;

namespace ReworkThermal.Data.Store;

/// <summary>A text that was being typed when the program ended.</summary>
/// <param name="Job">Job that the text belongs to, or null when it belongs to none.</param>
/// <param name="JobName">Name of the job as it was then; empty when there is none.</param>
/// <param name="Place">Place on the screens.</param>
/// <param name="Field">Kind of the field.</param>
/// <param name="Of">What the field is about, such as a pad or the number of an entry; may be empty.</param>
/// <param name="Label">What was asked.</param>
/// <param name="Text">What had been typed.</param>
public sealed record Draft(string? Job, string JobName, string Place, string Field, string Of, string Label, string Text);

/// <summary>The texts being typed when the program ended, in a small JSON file beside the job store. Safe to call from several threads.</summary>
/// <param name="store">Path of the job store.</param>
public sealed class DraftFile(string store)
{
    // Far above what was ever typed: a text field holds 2000 characters.
    private const int MostBytes = 1 << 20;

    private readonly Lock _lock = new();

    /// <summary>Where the texts are; there is no such file while there are none.</summary>
    public string Path { get; } = store + ".drafts.json";

    /// <summary>Reads the texts.</summary>
    /// <returns>The texts, oldest first.</returns>
    /// <exception cref="DataFileException">The file is no list of texts; it was set aside under the name in the message.</exception>
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    public IReadOnlyList<Draft> Read()
    {
        lock (_lock)
        {
            FileInfo file = new(Path);
            if (!file.Exists)
            {
                return [];
            }

            try
            {
                return file.Length > MostBytes
                    ? throw new JsonException("larger than any list of texts")
                    : [.. (JsonSerializer.Deserialize(File.ReadAllBytes(Path), DraftJson.Default.DraftArray) ?? []).OfType<Draft>()];
            }
            catch (JsonException)
            {
                string aside = Path + ".unreadable";
                File.Move(Path, aside, overwrite: true);
                throw new DataFileException($"what was being typed last time cannot be read; it was set aside as '{aside}'.");
            }
        }
    }

    /// <summary>Replaces what is kept, whole or not at all.</summary>
    /// <param name="drafts">The texts to be kept, oldest first; when there are none the file goes.</param>
    /// <exception cref="IOException">The disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public void Keep(IReadOnlyList<Draft> drafts)
    {
        ArgumentNullException.ThrowIfNull(drafts);
        lock (_lock)
        {
            if (drafts.Count == 0)
            {
                File.Delete(Path);
                return;
            }

            byte[] text = JsonSerializer.SerializeToUtf8Bytes([.. drafts], DraftJson.Default.DraftArray);
            _ = Directory.CreateDirectory(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(Path))!);
            WholeFile.Write(Path, overwrite: true, beside => File.WriteAllBytes(beside, text));
        }
    }
}

/// <summary>Reads and writes the list of texts without looking at types at run time.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    WriteIndented = true,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(Draft[]))]
internal sealed partial class DraftJson : JsonSerializerContext;
