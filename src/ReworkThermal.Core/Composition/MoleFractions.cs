namespace ReworkThermal.Core.Composition;

/// <summary>Composition by amount over the modelled elements [mol/mol]; non-negative, sums to one within rounding. Immutable.</summary>
public sealed class MoleFractions
{
    private readonly double[] _fractions;

    private MoleFractions(double[] fractions) => _fractions = fractions;

    /// <summary>Mole fraction of an element [mol/mol].</summary>
    /// <param name="element">The element.</param>
    public double this[Element element] => _fractions[(int)element];

    /// <summary>Builds a composition from amounts in any common unit; they are scaled to sum to one.</summary>
    /// <param name="amounts">One non-negative finite amount per element in index order.</param>
    /// <returns>The composition.</returns>
    /// <exception cref="ArgumentException">An amount is negative or not finite, the length is wrong, or all are zero.</exception>
    public static MoleFractions FromAmounts(ReadOnlySpan<double> amounts)
    {
        if (amounts.Length != ElementData.Count)
        {
            throw new ArgumentException($"expected {ElementData.Count} amounts, got {amounts.Length}", nameof(amounts));
        }

        double sum = 0;
        foreach (double amount in amounts)
        {
            if (!double.IsFinite(amount) || amount < 0)
            {
                throw new ArgumentException("amounts must be finite and not negative", nameof(amounts));
            }

            sum += amount;
        }

        if (!(sum > 0) || !double.IsFinite(sum))
        {
            throw new ArgumentException("the amounts must have a positive finite sum", nameof(amounts));
        }

        double[] fractions = new double[ElementData.Count];
        for (int i = 0; i < fractions.Length; i++)
        {
            fractions[i] = amounts[i] / sum;
        }

        return new MoleFractions(fractions);
    }

    /// <summary>Mean molar mass [g/mol].</summary>
    /// <returns>Grams per mole of atoms.</returns>
    public double MeanGramsPerMole() => ElementData.All.Sum(e => _fractions[(int)e] * e.GramsPerMole());

    /// <summary>Composition by mass.</summary>
    /// <returns>Mass fractions without inert trace.</returns>
    public MassFractions ToMassFractions()
    {
        double[] masses = new double[ElementData.Count];
        foreach (Element element in ElementData.All)
        {
            masses[(int)element] = _fractions[(int)element] * element.GramsPerMole();
        }

        return MassFractions.FromMasses(masses);
    }
}
