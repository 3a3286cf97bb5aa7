using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>
/// Finds the bench that explains observed touches best: maximum a posteriori least squares over the learnable inputs, each with a
/// standard normal prior in its own range (Gauss-Newton with Levenberg damping). A touch that did not flow counts with the probability
/// of a time longer than what was waited.
/// </summary>
/// <param name="seen">What was seen, by touch.</param>
/// <param name="response">What a bench does.</param>
/// <param name="timingError">Standard deviation of a time to flow as a share of it [1].</param>
/// <param name="readingErrorK">Standard deviation of a thermocouple reading [K].</param>
internal sealed class CalibrationFit(IReadOnlyList<Sighting> seen, ITouchResponse response, double timingError, double readingErrorK)
{
    /// <summary>Standard deviations beyond which an observation is set aside: one in 370 by chance.</summary>
    internal const double OutlierFrom = 3;

    private const int MostSteps = 200;

    // Wide enough that the noise of an adaptive time step does not show in the slope.
    private const double SlopeStep = 0.2;

    private const double Settled = 1e-3;

    // Twice a log-likelihood: a gain of this size moves no input by more than about a thousandth of its standard deviation.
    private const double LeastGain = 1e-6;
    private const double LeastDamping = 1e-6;
    private const double FirstDamping = 1e-2;
    private const double MostDamping = 1e8;

    private readonly int _inputs = Uncertainty.UncertainInputs.Learnable.Count;

    /// <summary>Runs the fit, setting outliers aside one by one, the worst first.</summary>
    /// <param name="cancellation">Stops between steps.</param>
    internal FitOutcome Run(CancellationToken cancellation)
    {
        if (seen.Count == 0)
        {
            return new FitOutcome.NotFitted("there is no observation yet");
        }

        HashSet<int> aside = [];
        while (true)
        {
            if (Solve(aside, cancellation) is not { } place)
            {
                return new FitOutcome.NotFitted("the fit did not settle; check the observations for typing errors");
            }

            double[] misfits = [.. Enumerable.Range(0, seen.Count).Select(i => Misfit(i, place.Deviations))];
            int worst = Enumerable.Range(0, seen.Count).Where(i => !aside.Contains(i)).MaxBy(i => Math.Abs(misfits[i]));
            if (Math.Abs(misfits[worst]) <= OutlierFrom)
            {
                return Outcome(place.Deviations, place.Covariance, misfits, aside);
            }

            aside.Add(worst);
            if (aside.Count == seen.Count)
            {
                return new FitOutcome.NotFitted("no observation fits the stated ranges; check settings, contact and solder before trusting a plan for this board");
            }
        }
    }

    private FitOutcome.Fitted Outcome(double[] place, Matrix<double> covariance, double[] misfits, HashSet<int> aside)
    {
        double[] centre = new double[_inputs];
        return new FitOutcome.Fitted(
            place,
            [.. covariance.EnumerateRows().Select(r => (IReadOnlyList<double>)[.. r])],
            [.. seen.Select((s, i) => new FittedTouch(Shown(s, response.Expected(i, place)), Shown(s, response.Expected(i, centre)), misfits[i], aside.Contains(i)))]);
    }

    private static double Shown(Sighting sighting, double expected) => sighting is Sighting.Reading ? expected : Math.Exp(expected);

    private (double[] Deviations, Matrix<double> Covariance)? Solve(HashSet<int> aside, CancellationToken cancellation)
    {
        int[] used = [.. Enumerable.Range(0, seen.Count).Where(i => !aside.Contains(i))];
        double[] place = new double[_inputs];
        double damping = FirstDamping;
        Vector<double> residuals = Residuals(used, place);
        for (int step = 0; step < MostSteps; step++)
        {
            cancellation.ThrowIfCancellationRequested();
            Matrix<double> slopes = Slopes(used, place);
            Matrix<double> curvature = slopes.TransposeThisAndMultiply(slopes);
            Vector<double> gradient = slopes.TransposeThisAndMultiply(residuals);
            double cost = residuals.DotProduct(residuals);
            bool isSettled = true;
            for (double moved = double.PositiveInfinity; moved > Settled && damping < MostDamping; damping *= 10)
            {
                Matrix<double> damped = curvature + (Matrix<double>.Build.DiagonalOfDiagonalVector(curvature.Diagonal()) * damping);
                Vector<double> change = damped.Solve(-gradient);
                double[] next = [.. place.Zip(change, (p, c) => p + c)];
                Vector<double> better = Residuals(used, next);
                moved = change.L2Norm();
                double gained = cost - better.DotProduct(better);
                if (gained >= 0)
                {
                    isSettled = moved <= Settled || gained <= LeastGain * (1 + cost);
                    (place, residuals) = (next, better);
                    damping = Math.Max(LeastDamping, damping / 100);
                    break;
                }
            }

            // No step that is long enough to matter, however damped, leads further down: this is the bottom.
            if (isSettled)
            {
                Matrix<double> last = Slopes(used, place);
                return (place, last.TransposeThisAndMultiply(last).Inverse());
            }

            damping = Math.Clamp(damping, LeastDamping, FirstDamping);
        }

        return null;
    }

    // Observations first, then the prior: every input is a standard normal number.
    private Vector<double> Residuals(int[] used, double[] place)
    {
        double[] all = new double[used.Length + _inputs];
        Parallel.For(0, used.Length, i => all[i] = Misfit(used[i], place));
        place.CopyTo(all, used.Length);
        return Vector<double>.Build.Dense(all);
    }

    private Matrix<double> Slopes(int[] used, double[] place)
    {
        Matrix<double> slopes = Matrix<double>.Build.Dense(used.Length + _inputs, _inputs);
        double[,] values = new double[used.Length, _inputs];
        Parallel.For(0, used.Length * _inputs, k =>
        {
            (int i, int p) = Math.DivRem(k, _inputs);
            values[i, p] = (Misfit(used[i], Moved(place, p, SlopeStep)) - Misfit(used[i], Moved(place, p, -SlopeStep))) / (2 * SlopeStep);
        });
        for (int p = 0; p < _inputs; p++)
        {
            for (int i = 0; i < used.Length; i++)
            {
                slopes[i, p] = values[i, p];
            }

            slopes[used.Length + p, p] = 1;
        }

        return slopes;
    }

    private static double[] Moved(double[] place, int input, double by)
    {
        double[] moved = [.. place];
        moved[input] += by;
        return moved;
    }

    // Half the square of a misfit is the negative logarithm of the likelihood, up to a constant.
    private double Misfit(int touch, double[] place)
    {
        double expected = response.Expected(touch, place);
        return seen[touch] switch
        {
            Sighting.Flowed flowed => (expected - Math.Log(flowed.After.Seconds)) / timingError,
            Sighting.FlowedWithin by => Censored((Math.Log(by.Within.Seconds) - expected) / timingError),
            Sighting.NotFlowed not => Censored((expected - Math.Log(not.Within.Seconds)) / timingError),
            Sighting.Reading reading => (expected - reading.Value.DegreesCelsius) / readingErrorK,
            _ => throw new InvalidOperationException("unknown kind of sighting"),
        };
    }

    // sqrt(-2 ln Phi(u)); far below zero Phi(u) is exp(-u²/2) / (|u| sqrt(2 pi)), which does not underflow when taken in the logarithm.
    private static double Censored(double u) => u > -8
        ? Math.Sqrt(Math.Max(0, -2 * Math.Log(Normal.CDF(0, 1, u))))
        : Math.Sqrt((u * u) + (2 * Math.Log(-u * Math.Sqrt(2 * Math.PI))));
}
