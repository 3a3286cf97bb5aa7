namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>Local error of a TR-BDF2 step, root mean square over cells and bodies [K].</summary>
internal static class StepError
{
    // Hosea and Shampine (1996): error constant of TR-BDF2 with gamma = 2 - sqrt(2).
    private const double ErrorConstant = 0.04044;

    /// <summary>From the third divided difference of temperature over the last point, this point, the inner point and the next point.</summary>
    internal static double FromDifferences(StageState before, StageState now, StageState inner, StageState next, double lastStep, double step, int cells, int filled)
    {
        double t0 = -lastStep;
        double t2 = TransientEngine.Gamma * step;
        double w0 = 1 / (t0 * (t0 - t2) * (t0 - step));
        double w1 = -1 / (t0 * t2 * step);
        double w2 = 1 / ((t2 - t0) * t2 * (t2 - step));
        double w3 = 1 / ((step - t0) * step * (step - t2));
        double sum = Squares(before.CellK, now.CellK, inner.CellK, next.CellK, cells)
            + Squares(before.BodyK, now.BodyK, inner.BodyK, next.BodyK, now.BodyK.Length);
        return 6 * ErrorConstant * step * step * step * Math.Sqrt(sum / (filled + now.BodyK.Length));

        double Squares(double[] a, double[] b, double[] c, double[] d, int count)
        {
            double squares = 0;
            for (int p = 0; p < count; p++)
            {
                double difference = (w0 * a[p]) + (w1 * b[p]) + (w2 * c[p]) + (w3 * d[p]);
                squares += difference * difference;
            }

            return squares;
        }
    }

    /// <summary>From the embedded formula of third order, filtered by the stage matrix; needs no earlier point.</summary>
    internal static double Embedded(StageState now, StageState inner, StageState next, int cells, int filled, double[] scratch, ImplicitSolver solver)
    {
        const double gamma = TransientEngine.Gamma;
        const double scale = 2 * ErrorConstant / TransientEngine.EndWeight;
        for (int p = 0; p < cells; p++)
        {
            scratch[p] = scale * ((now.Rates[p] / gamma) - (inner.Rates[p] / (gamma * (1 - gamma))) + (next.Rates[p] / (1 - gamma)));
        }

        solver.Filter(scratch);
        double sum = 0;
        for (int p = 0; p < cells; p++)
        {
            sum += scratch[p] * scratch[p];
        }

        return Math.Sqrt(sum / filled);
    }
}
