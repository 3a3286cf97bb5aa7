using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Thermodynamics;

/// <summary>Reads Gibbs-energy terms [J/mol, K] such as <c>{ to = "505.08 K", constant = -5855.1, T = 65.4, T_ln_T = -16.0 }</c>.</summary>
internal static class GibbsTerms
{
    /// <summary>Reads a list of expressions.</summary>
    internal static IReadOnlyList<GibbsPiece> Pieces(FieldReader table, string name)
    {
        List<GibbsPiece> pieces = [];
        foreach (FieldReader terms in table.Tables(name))
        {
            pieces.Add(Piece(terms));
        }

        return pieces.Count > 0 ? pieces : throw table.Wrong(name, "must have at least one entry");
    }

    private static GibbsPiece Piece(FieldReader terms) => new()
    {
        ToKelvin = terms.Has("to")
            ? terms.Quantity("to", UnitTable.Temperatures, Temperature.Zero).Kelvins
            : double.PositiveInfinity,
        Constant = Optional(terms, "constant"),
        Linear = Optional(terms, "T"),
        LogLinear = Optional(terms, "T_ln_T"),
        Square = Optional(terms, "T2"),
        Cube = Optional(terms, "T3"),
        Inverse = Optional(terms, "T_inv"),
        Seventh = Optional(terms, "T7"),
        InverseNinth = Optional(terms, "T_inv9"),
        ExponentialFactor = Optional(terms, "exp_factor"),
        ExponentialRate = Optional(terms, "exp_rate_per_k"),
    };

    private static double Optional(FieldReader terms, string name) => terms.Has(name) ? terms.Number(name) : 0;
}
