namespace ReworkThermal.Core.Numerics;

/// <summary>
/// Uniform pseudo-random numbers from a seed, the same on every machine: SplitMix64 (Steele, Lea and Flood, OOPSLA 2014; constants from
/// memory). For sampling, not for secrets.
/// </summary>
/// <param name="seed">Any number; the same seed gives the same sequence.</param>
internal sealed class SplitMix64(ulong seed)
{
    private const double Unit = 1.0 / (1UL << 53);

    private ulong _state = seed;

    /// <summary>Next number, 0 or more and below 1.</summary>
    internal double NextUnit() => (Next() >> 11) * Unit;

    /// <summary>Next whole number, 0 or more and below a bound.</summary>
    /// <param name="bound">Above zero, at most a million; the bias of the remainder is then far below what sampling can see.</param>
    internal int NextBelow(int bound) => (int)(Next() % (ulong)bound);

    private ulong Next()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15;
            ulong z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
