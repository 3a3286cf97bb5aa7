namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>A named Gibbs-energy function of temperature [J/mol], such as that of a pure element in its stable solid.</summary>
/// <param name="Name">Name that parameters refer to.</param>
/// <param name="Pieces">Expression by rising temperature interval, at least one.</param>
public sealed record GibbsFunction(string Name, IReadOnlyList<GibbsPiece> Pieces)
{
    /// <summary>The piece that holds at a temperature; the last one holds above its end.</summary>
    internal static GibbsPiece PieceAt(IReadOnlyList<GibbsPiece> pieces, double kelvin)
    {
        for (int i = 0; i < pieces.Count - 1; i++)
        {
            if (kelvin < pieces[i].ToKelvin)
            {
                return pieces[i];
            }
        }

        return pieces[^1];
    }
}
