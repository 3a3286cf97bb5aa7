using System.Globalization;
using System.Text;

namespace ReworkThermal.Core.Composition;

/// <summary>
/// Composition by mass over the modelled elements [kg/kg], plus an inert trace of elements that are carried along but not
/// modelled. Fractions are non-negative and sum to one within rounding. Immutable.
/// </summary>
public sealed class MassFractions : IEquatable<MassFractions>
{
    private readonly double[] _fractions;

    private MassFractions(double[] fractions, double inertTrace, double nickel)
    {
        _fractions = fractions;
        InertTrace = inertTrace;
        Nickel = nickel;
    }

    /// <summary>Mass fraction of elements that are carried along without effect on melting, nickel among them [kg/kg].</summary>
    public double InertTrace { get; }

    /// <summary>Mass fraction of nickel, a part of <see cref="InertTrace"/> [kg/kg].</summary>
    public double Nickel { get; }

    /// <summary>Mass fraction of an element [kg/kg].</summary>
    /// <param name="element">The element.</param>
    public double this[Element element] => _fractions[(int)element];

    /// <summary>Elements present in more than zero amount, in index order.</summary>
    public IEnumerable<Element> Present => ElementData.All.Where(e => _fractions[(int)e] > 0);

    /// <summary>Builds a composition from amounts in any common mass unit; they are scaled to sum to one.</summary>
    /// <param name="masses">One non-negative finite mass per element in index order (<see cref="ElementData.Count"/> values).</param>
    /// <param name="inertTrace">Mass of elements carried along without effect, nickel among them, in the same unit.</param>
    /// <param name="nickel">Mass of nickel in the same unit, not above <paramref name="inertTrace"/>.</param>
    /// <returns>The composition.</returns>
    /// <exception cref="ArgumentException">A mass is negative or not finite, the length is wrong, or all are zero.</exception>
    public static MassFractions FromMasses(ReadOnlySpan<double> masses, double inertTrace = 0, double nickel = 0)
    {
        if (masses.Length != ElementData.Count)
        {
            throw new ArgumentException($"expected {ElementData.Count} masses, got {masses.Length}", nameof(masses));
        }

        double sum = inertTrace;
        foreach (double mass in masses)
        {
            if (!double.IsFinite(mass) || mass < 0)
            {
                throw new ArgumentException("masses must be finite and not negative", nameof(masses));
            }

            sum += mass;
        }

        if (!(sum > 0) || !double.IsFinite(sum) || inertTrace < 0 || inertTrace >= sum)
        {
            throw new ArgumentException("the masses of the modelled elements must have a positive finite sum", nameof(masses));
        }

        if (!(nickel >= 0 && nickel <= inertTrace))
        {
            throw new ArgumentException("nickel is part of what is carried along, so its mass lies between zero and that", nameof(nickel));
        }

        double[] fractions = new double[ElementData.Count];
        for (int i = 0; i < fractions.Length; i++)
        {
            fractions[i] = masses[i] / sum;
        }

        return new MassFractions(fractions, inertTrace / sum, nickel / sum);
    }

    /// <summary>Builds a composition from element and mass pairs in any common mass unit.</summary>
    /// <param name="masses">Pairs; an element may occur more than once.</param>
    /// <returns>The composition, scaled to sum to one.</returns>
    public static MassFractions Of(params ReadOnlySpan<(Element Element, double Mass)> masses)
    {
        double[] vector = new double[ElementData.Count];
        foreach ((Element element, double mass) in masses)
        {
            vector[(int)element] += mass;
        }

        return FromMasses(vector);
    }

    /// <summary>Mixes two compositions: w = ((1 - share) this + share other).</summary>
    /// <param name="other">What is mixed in.</param>
    /// <param name="share">Mass share of <paramref name="other"/> in the mix, 0 to 1.</param>
    /// <returns>The mix.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    public MassFractions MixedWith(MassFractions other, double share)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!(share >= 0 && share <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "a mass share lies between 0 and 1");
        }

        double[] mixed = new double[ElementData.Count];
        for (int i = 0; i < mixed.Length; i++)
        {
            mixed[i] = ((1 - share) * _fractions[i]) + (share * other._fractions[i]);
        }

        double inert = ((1 - share) * InertTrace) + (share * other.InertTrace);
        return FromMasses(mixed, inert, Math.Min(inert, ((1 - share) * Nickel) + (share * other.Nickel)));
    }

    /// <summary>Composition by amount of the modelled elements; the inert trace is left out.</summary>
    /// <returns>Mole fractions.</returns>
    public MoleFractions ToMoleFractions()
    {
        double[] moles = new double[ElementData.Count];
        foreach (Element element in ElementData.All)
        {
            moles[(int)element] = _fractions[(int)element] / element.GramsPerMole();
        }

        return MoleFractions.FromAmounts(moles);
    }

    /// <summary>The mass fractions in index order, as a copy.</summary>
    /// <returns><see cref="ElementData.Count"/> values [kg/kg].</returns>
    public double[] ToArray() => (double[])_fractions.Clone();

    /// <summary>Designation in the manner of ISO 9453: largest share first, percent by mass, for example <c>Sn96.5Ag3Cu0.5</c>.</summary>
    /// <returns>The designation, shares rounded to 0.01 %; nickel is named, other elements carried along are not.</returns>
    public override string ToString()
    {
        StringBuilder text = new();
        foreach ((string symbol, double fraction) in Present.Select(e => (e.Symbol(), _fractions[(int)e])).Append(("Ni", Nickel)).OrderByDescending(p => p.Item2))
        {
            double percent = Math.Round(fraction * 100, 2);
            if (percent > 0)
            {
                text.Append(symbol).Append(percent.ToString("0.##", CultureInfo.InvariantCulture));
            }
        }

        return text.ToString();
    }

    /// <inheritdoc/>
    public bool Equals(MassFractions? other) =>
        other is not null && InertTrace.Equals(other.InertTrace) && Nickel.Equals(other.Nickel) && _fractions.AsSpan().SequenceEqual(other._fractions);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as MassFractions);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        foreach (double fraction in _fractions)
        {
            hash.Add(fraction);
        }

        hash.Add(InertTrace);
        hash.Add(Nickel);
        return hash.ToHashCode();
    }
}
