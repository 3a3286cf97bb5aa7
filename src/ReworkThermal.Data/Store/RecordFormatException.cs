using System.Diagnostics.CodeAnalysis;

namespace ReworkThermal.Data.Store;

/// <summary>A stored or exported record is not in order; whoever reads it adds where it stood.</summary>
[SuppressMessage("Design", "CA1064:Exceptions should be public", Justification = "Never leaves this folder: the store and the archive translate it.")]
[SuppressMessage("Design", "CA1032:Implement standard exception constructors", Justification = "Same reason.")]
internal sealed class RecordFormatException : Exception
{
    internal RecordFormatException(string message)
        : base(message)
    {
    }

    internal RecordFormatException(string message, Exception cause)
        : base(message, cause)
    {
    }
}
