namespace ReworkThermal.App.Wording;

/// <summary>Makes sentences of clauses that other parts of the program give.</summary>
internal static class Sentence
{
    /// <summary>A clause with a capital letter and a full stop.</summary>
    internal static string Of(string clause) => Capital(clause) + (clause.EndsWith('.') ? string.Empty : ".");

    /// <summary>A clause with a capital letter.</summary>
    internal static string Capital(string clause) => char.ToUpperInvariant(clause[0]) + clause[1..];
}
