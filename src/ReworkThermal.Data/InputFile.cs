using System.Globalization;

namespace ReworkThermal.Data;

/// <summary>
/// Reads files that somebody names: plain files only, and none that is too large for what it should be. What is no plain file is
/// refused before it is opened, since opening a pipe would wait for ever.
/// </summary>
public static class InputFile
{
    /// <summary>Most bytes of a data file: alloy, profile, request or case. The largest shipped one has 14 kB.</summary>
    public const long MostData = 1 << 20;

    /// <summary>Most bytes of a list of pins.</summary>
    public const long MostPins = 1 << 20;

    /// <summary>Most bytes of a measured series.</summary>
    public const long MostSeries = 16 << 20;

    /// <summary>Most bytes of an export to be imported.</summary>
    public const long MostArchive = 512L << 20;

    /// <summary>Most bytes of a job store; a hundred thousand touches take a fiftieth of it.</summary>
    public const long MostStore = 4L << 30;

    /// <summary>Reads a text file.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="most">Most bytes it may have.</param>
    /// <param name="shownAs">Name for messages; the path itself by default.</param>
    /// <returns>The text.</returns>
    /// <exception cref="DataFileException">It is no plain file, is too large or cannot be read.</exception>
    public static string ReadText(string path, long most, string? shownAs = null) => Read(path, most, shownAs, File.ReadAllText);

    /// <summary>Reads the bytes of a file.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="most">Most bytes it may have.</param>
    /// <returns>The bytes.</returns>
    /// <exception cref="DataFileException">It is no plain file, is too large or cannot be read.</exception>
    public static byte[] ReadBytes(string path, long most) => Read(path, most, null, File.ReadAllBytes);

    /// <summary>Why a file cannot be what it should be, without opening it.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="most">Most bytes it may have.</param>
    /// <returns>A clause, or null when nothing speaks against it or nothing is there.</returns>
    internal static string? Objection(string path, long most) => FileMark.Of(path) switch
    {
        null => null,
        { IsFolder: true } => "it is a folder, not a file",
        { IsRegular: false } => "it is a pipe, a device or a socket, not a plain file",
        { Size: var size } when size > most => string.Create(CultureInfo.InvariantCulture, $"it has {Bytes(size)}; at most {Bytes(most)} are read"),
        _ => null,
    };

    private static T Read<T>(string path, long most, string? shownAs, Func<string, T> read)
    {
        try
        {
            return Objection(path, most) is { } objection ? throw Wrong(objection) : read(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw Wrong(problem is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : "cannot be read: " + problem.Message);
        }

        DataFileException Wrong(string rule) => new([new DataFileProblem(shownAs ?? path, 0, string.Empty, rule)]);
    }

    private static string Bytes(long count) => count >= 1 << 20
        ? string.Create(CultureInfo.InvariantCulture, $"{count / (double)(1 << 20):0.#} MiB")
        : string.Create(CultureInfo.InvariantCulture, $"{count} bytes");
}
