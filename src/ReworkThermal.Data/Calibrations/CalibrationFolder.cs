namespace ReworkThermal.Data.Calibrations;

/// <summary>
/// Calibrations in the user's own folder, one file per model of board. Start reading this folder here. A file is replaced as a whole: it
/// is either the old one or the new one, whatever happens in between.
/// </summary>
/// <param name="path">The folder; it need not exist.</param>
public sealed class CalibrationFolder(string path)
{
    /// <summary>Reads what is known of a board.</summary>
    /// <param name="board">Board profile.</param>
    /// <returns>The record, or null when there is none.</returns>
    /// <exception cref="DataFileException">The file is not in order; file, line and field are named.</exception>
    public BoardRecord? Find(string board)
    {
        ArgumentNullException.ThrowIfNull(board);
        string file = FileOf(board);
        return File.Exists(file) ? BoardRecordReader.Read(file) : null;
    }

    /// <summary>Keeps a record in place of the one before.</summary>
    /// <param name="record">The record.</param>
    /// <exception cref="DataFileException">The folder cannot be written.</exception>
    public void Keep(BoardRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        string file = FileOf(record.Board);
        try
        {
            Directory.CreateDirectory(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new DataFileException([new DataFileProblem(file, 0, string.Empty, "cannot be written: " + problem.Message)]);
        }

        if (new OutputFiles([]).Write(file, force: true, draft => File.WriteAllText(draft, BoardRecordWriter.TextOf(record))) is { } complaint)
        {
            throw new DataFileException([new DataFileProblem(file, 0, string.Empty, complaint)]);
        }
    }

    /// <summary>Forgets all that is known of a board.</summary>
    /// <param name="board">Board profile.</param>
    /// <returns>Whether there was something to forget.</returns>
    public bool Forget(string board)
    {
        ArgumentNullException.ThrowIfNull(board);
        string file = FileOf(board);
        bool known = File.Exists(file);
        if (known)
        {
            File.Delete(file);
        }

        return known;
    }

    // A board's name is the name of its profile file, so it can name a file here too; a path in it would lead elsewhere.
    private string FileOf(string board) => Path.GetFileName(board) == board && board.Length > 0
        ? Path.Combine(path, board + ".toml")
        : throw new ArgumentException("a board is named by its profile, without a path", nameof(board));
}
