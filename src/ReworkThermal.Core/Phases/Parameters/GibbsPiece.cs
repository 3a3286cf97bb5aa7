namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>
/// One temperature interval of a Gibbs-energy expression [J/mol]:
/// C + B T + A T ln T + D T^2 + E T^3 + F / T + G T^7 + H T^-9 + P exp(-Q T), T in kelvin.
/// The form is that of the SGTE pure-element data (Dinsdale 1991) plus the exponential term of some recent assessments.
/// </summary>
public sealed record GibbsPiece
{
    /// <summary>Upper end of the interval [K]; the last piece of an expression holds above it as well.</summary>
    public double ToKelvin { get; init; } = double.PositiveInfinity;

    /// <summary>Constant [J/mol].</summary>
    public double Constant { get; init; }

    /// <summary>Factor of T [J/mol/K].</summary>
    public double Linear { get; init; }

    /// <summary>Factor of T ln T [J/mol/K].</summary>
    public double LogLinear { get; init; }

    /// <summary>Factor of T^2 [J/mol/K^2].</summary>
    public double Square { get; init; }

    /// <summary>Factor of T^3 [J/mol/K^3].</summary>
    public double Cube { get; init; }

    /// <summary>Factor of 1/T [J K/mol].</summary>
    public double Inverse { get; init; }

    /// <summary>Factor of T^7 [J/mol/K^7].</summary>
    public double Seventh { get; init; }

    /// <summary>Factor of T^-9 [J K^9/mol].</summary>
    public double InverseNinth { get; init; }

    /// <summary>Factor of exp(-k T) [J/mol].</summary>
    public double ExponentialFactor { get; init; }

    /// <summary>k in exp(-k T) [1/K].</summary>
    public double ExponentialRate { get; init; }

    /// <summary>Value [J/mol] and slope [J/mol/K] at a temperature.</summary>
    internal (double Value, double Slope) At(in TemperaturePowers t)
    {
        double value = Constant + (Linear * t.T) + (LogLinear * t.T * t.LogT);
        double slope = Linear + (LogLinear * (t.LogT + 1));
        if (Square != 0 || Cube != 0 || Inverse != 0 || Seventh != 0 || InverseNinth != 0)
        {
            value += (Square * t.Square) + (Cube * t.Cube) + (Inverse * t.Inverse) + (Seventh * t.Seventh) + (InverseNinth * t.InverseNinth);
            slope += (2 * Square * t.T) + (3 * Cube * t.Square) - (Inverse * t.Inverse * t.Inverse)
                + ((7 * Seventh * t.Seventh) - (9 * InverseNinth * t.InverseNinth)) * t.Inverse;
        }

        if (ExponentialFactor != 0)
        {
            double term = ExponentialFactor * Math.Exp(-ExponentialRate * t.T);
            value += term;
            slope -= ExponentialRate * term;
        }

        return (value, slope);
    }
}
