namespace ReworkThermal.Core.Boards;

/// <summary>Something on the bench cannot exist as described: a leg wider than its hole, layers thicker than the board.</summary>
public sealed class ImpossibleGeometryException : ArgumentException
{
    /// <summary>Creates the exception without details.</summary>
    public ImpossibleGeometryException()
        : this("the geometry is impossible")
    {
    }

    /// <summary>Creates the exception with a message only.</summary>
    /// <param name="message">The message.</param>
    public ImpossibleGeometryException(string message)
        : this(string.Empty, message)
    {
    }

    /// <summary>Creates the exception with a message and a cause.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">The cause.</param>
    public ImpossibleGeometryException(string message, Exception innerException)
        : base(message, innerException)
    {
        Field = string.Empty;
        Rule = message;
    }

    /// <summary>Creates the exception for one field.</summary>
    /// <param name="field">Name of the field as a profile file writes it, for example <c>leg.diameter</c>.</param>
    /// <param name="rule">What is wrong and what would be right, as one clause.</param>
    public ImpossibleGeometryException(string field, string rule)
        : base(string.IsNullOrEmpty(field) ? rule : $"{field}: {rule}")
    {
        Field = field;
        Rule = rule;
    }

    /// <summary>Field that is wrong, as a profile file writes it; empty when no single field is.</summary>
    public string Field { get; }

    /// <summary>What is wrong and what would be right.</summary>
    public string Rule { get; }
}
