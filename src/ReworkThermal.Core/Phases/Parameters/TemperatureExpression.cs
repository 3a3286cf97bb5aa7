namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>A Gibbs-energy term [J/mol] as a function of temperature: shares of named functions plus an expression of its own.</summary>
/// <param name="Shares">Named functions with their multipliers; may be empty.</param>
/// <param name="Pieces">Own expression by rising temperature interval; may be empty (zero).</param>
public sealed record TemperatureExpression(IReadOnlyList<FunctionShare> Shares, IReadOnlyList<GibbsPiece> Pieces)
{
    /// <summary>Value at a temperature.</summary>
    /// <param name="kelvin">Temperature [K].</param>
    /// <param name="functions">The named functions that the shares refer to.</param>
    /// <returns>Value [J/mol].</returns>
    public double JoulePerMole(double kelvin, IReadOnlyList<GibbsFunction> functions)
    {
        ArgumentNullException.ThrowIfNull(functions);
        TemperaturePowers powers = new(kelvin);
        double own = Pieces.Count > 0 ? GibbsFunction.PieceAt(Pieces, kelvin).At(powers).Value : 0;
        return own + Shares.Sum(s => s.Times * GibbsFunction.PieceAt(functions[s.Function].Pieces, kelvin).At(powers).Value);
    }

    /// <summary>Value [J/mol] and slope [J/mol/K], given the values of all named functions at the same temperature.</summary>
    internal (double Value, double Slope) At(in TemperaturePowers t, ReadOnlySpan<double> functionValues, ReadOnlySpan<double> functionSlopes)
    {
        double value = 0;
        double slope = 0;
        for (int i = 0; i < Shares.Count; i++)
        {
            FunctionShare share = Shares[i];
            value += share.Times * functionValues[share.Function];
            slope += share.Times * functionSlopes[share.Function];
        }

        if (Pieces.Count > 0)
        {
            (double own, double ownSlope) = GibbsFunction.PieceAt(Pieces, t.T).At(t);
            value += own;
            slope += ownSlope;
        }

        return (value, slope);
    }
}
