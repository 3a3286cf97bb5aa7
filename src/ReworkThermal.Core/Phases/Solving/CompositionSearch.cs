namespace ReworkThermal.Core.Phases.Solving;

/// <summary>
/// Looks for phases under a tangent plane from several starts per phase: the composition an ideal solution would take, and one
/// near each pure constituent, so that both sides of a miscibility gap are found.
/// </summary>
internal sealed class CompositionSearch(GibbsSurfaces surfaces, TangentPlane plane)
{
    /// <summary>Two minima of one phase nearer than this in every site fraction are one.</summary>
    internal const double Same = 1e-3;

    /// <summary>Minima that stay above this height are far from forming, and are not refined [R T].</summary>
    internal const double HopelessHeight = 0.5;

    private const double CornerShare = 0.02;

    private readonly double[] _gradient = new double[TangentPlane.MostVariables];

    /// <summary>Distinct minima of one phase over the plane, from every start.</summary>
    /// <param name="model">The phase.</param>
    /// <param name="potentials">Chemical potentials / R T at the surfaces' temperature.</param>
    /// <param name="hopeless">Minima that can hardly get under this height are not refined [R T].</param>
    internal List<Basin> Basins(PhaseModel model, ReadOnlySpan<double> potentials, double hopeless)
    {
        List<Basin> found = [];
        double[] start = new double[model.Variables];
        int corners = model.IsStoichiometric ? 0 : model.Variables;
        for (int corner = -1; corner < corners; corner++)
        {
            if (corner < 0)
            {
                FillIdeal(model, potentials, start);
            }
            else
            {
                FillCorner(model, corner, start);
            }

            double height = plane.Minimise(model, start, potentials, hopeless);
            if (!found.Exists(b => SiteFractions.Distance(b.Y, start) < Same))
            {
                found.Add(new Basin(model, (double[])start.Clone()) { Height = height });
            }
        }

        return found;
    }

    private void FillIdeal(PhaseModel model, ReadOnlySpan<double> potentials, Span<double> y)
    {
        Span<double> gradient = _gradient.AsSpan(0, model.Variables);
        for (int s = 0; s < model.Sublattices; s++)
        {
            for (int v = model.First[s]; v < model.First[s + 1]; v++)
            {
                y[v] = 1.0 / (model.First[s + 1] - model.First[s]);
            }
        }

        if (model.IsStoichiometric)
        {
            return;
        }

        surfaces.Evaluate(model, y, gradient, []);
        for (int s = 0; s < model.Sublattices; s++)
        {
            double most = double.NegativeInfinity;
            for (int v = model.First[s]; v < model.First[s + 1]; v++)
            {
                gradient[v] = potentials[model.Element[v]] - (gradient[v] / model.Share[v]);
                most = Math.Max(most, gradient[v]);
            }

            for (int v = model.First[s]; v < model.First[s + 1]; v++)
            {
                y[v] *= Math.Exp(Math.Max(gradient[v] - most, -30));
            }
        }

        SiteFractions.Normalise(model, y);
    }

    private static void FillCorner(PhaseModel model, int corner, Span<double> y)
    {
        for (int v = 0; v < model.Variables; v++)
        {
            int s = model.Sublattice[v];
            int size = model.First[s + 1] - model.First[s];
            bool own = s == model.Sublattice[corner];
            y[v] = !own || size == 1 ? 1.0 / size : v == corner ? 1 - CornerShare : CornerShare / (size - 1);
        }
    }
}
