using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// A phase reduced to the elements present, laid out for quick evaluation. Variables are site fractions y, one per constituent
/// and sublattice. Composition per mole of atoms is linear in them: x_e = sum over the variables of element e of share * y.
/// Immutable and shared between threads.
/// </summary>
internal sealed class PhaseModel
{
    /// <summary>Index in <see cref="ThermodynamicDatabase.Phases"/>.</summary>
    internal required int Description { get; init; }

    internal required string Name { get; init; }

    internal required bool IsLiquid { get; init; }

    /// <summary>Index among the models of the reduced system.</summary>
    internal required int Index { get; init; }

    /// <summary>Number of elements of the reduced system.</summary>
    internal required int ElementCount { get; init; }

    /// <summary>Element (index in the reduced system) of each variable.</summary>
    internal required int[] Element { get; init; }

    /// <summary>Sublattice of each variable; variables of one sublattice stand together.</summary>
    internal required int[] Sublattice { get; init; }

    /// <summary>First variable of each sublattice, and one past the last.</summary>
    internal required int[] First { get; init; }

    /// <summary>Sites of the variable's sublattice per atom of the phase.</summary>
    internal required double[] Share { get; init; }

    /// <summary>Variables of each end-member; the second is -1 with one sublattice.</summary>
    internal required (int V0, int V1)[] Ends { get; init; }

    internal required (int I, int J, int Parameter, int Count)[] Pairs { get; init; }

    internal required (int I, int J, int K, int Parameter)[] Triples { get; init; }

    /// <summary>Parameter expressions per formula unit: end-members first, then pairs, then triples.</summary>
    internal required TemperatureExpression[] Parameters { get; init; }

    /// <summary>Atoms per formula unit.</summary>
    internal required double Atoms { get; init; }

    internal int Variables => Element.Length;

    internal int Sublattices => First.Length - 1;

    /// <summary>Whether the composition is fixed.</summary>
    internal bool IsStoichiometric => Element.Length == First.Length - 1;

    /// <summary>Composition per mole of atoms.</summary>
    internal void Composition(ReadOnlySpan<double> y, Span<double> x)
    {
        x.Clear();
        for (int v = 0; v < Element.Length; v++)
        {
            x[Element[v]] += Share[v] * y[v];
        }
    }
}
