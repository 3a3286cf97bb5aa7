using System.Security.Cryptography;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>
/// Names jobs by ten random letters and digits without those that look alike (0 o, 1 l i): 49 bits, so that jobs from several
/// benches can be brought together.
/// </summary>
public sealed class RandomIdSource : IIdSource
{
    private const string Alphabet = "23456789abcdefghjkmnpqrstuvwxyz";
    private const int Length = 10;

    /// <inheritdoc/>
    public JobId NewJob() => new(RandomNumberGenerator.GetString(Alphabet, Length));
}
