namespace ReworkThermal.Core.Jobs;

/// <summary>The job store cannot do what was asked. The message is one or two clear sentences for the person at the bench.</summary>
public sealed class JobStoreException : Exception
{
    /// <summary>Creates the exception without details.</summary>
    public JobStoreException()
        : this(StoreTrouble.Unreadable, "the job store cannot be used")
    {
    }

    /// <summary>Creates the exception with a message only.</summary>
    /// <param name="message">The message.</param>
    public JobStoreException(string message)
        : this(StoreTrouble.Unreadable, message)
    {
    }

    /// <summary>Creates the exception with a message and a cause.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">The cause.</param>
    public JobStoreException(string message, Exception innerException)
        : this(StoreTrouble.Unreadable, message, innerException)
    {
    }

    /// <summary>Creates the exception.</summary>
    /// <param name="trouble">Which kind of trouble.</param>
    /// <param name="message">The message.</param>
    /// <param name="innerException">The cause, or null.</param>
    public JobStoreException(StoreTrouble trouble, string message, Exception? innerException = null)
        : base(message, innerException) => Trouble = trouble;

    /// <summary>Which kind of trouble.</summary>
    public StoreTrouble Trouble { get; }
}
