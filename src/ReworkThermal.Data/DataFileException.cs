namespace ReworkThermal.Data;

/// <summary>A data file cannot be used; the problems say where and why.</summary>
public sealed class DataFileException : Exception
{
    /// <summary>Creates the exception without details.</summary>
    public DataFileException()
        : this([])
    {
    }

    /// <summary>Creates the exception with a message only.</summary>
    /// <param name="message">The message.</param>
    public DataFileException(string message)
        : base(message) => Problems = [];

    /// <summary>Creates the exception with a message and a cause.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">The cause.</param>
    public DataFileException(string message, Exception innerException)
        : base(message, innerException) => Problems = [];

    /// <summary>Creates the exception from its problems.</summary>
    /// <param name="problems">What is wrong, in file order.</param>
    public DataFileException(IReadOnlyList<DataFileProblem> problems)
        : base(string.Join(Environment.NewLine, problems)) => Problems = problems;

    /// <summary>What is wrong, in file order.</summary>
    public IReadOnlyList<DataFileProblem> Problems { get; }
}
