using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>
/// Solves one implicit stage: find enthalpies H with H - a F(H) = B, by Newton's method with enthalpies as unknowns.
/// </summary>
/// <remarks>
/// Linear cells are exact after one solve. The residual over the heat capacity bounds the error in temperature, because the matrix
/// C/a + K is an M-matrix with row sums of at least C/a; no extra solve is needed to stop. Its column sums are at least C/a too, so
/// the sum of all residuals bounds the sum of all errors in enthalpy: a correction that does not lessen it is halved, which ends the
/// cycles in which cells melt and freeze by turns.
/// </remarks>
internal sealed class ImplicitSolver
{
    private const int MostRounds = 15;

    // A correction must lessen the sum of all residuals to this share of it; otherwise it is halved, down to the least share.
    private const double NoGain = 0.95;
    private const double LeastShare = 0.2;

    private readonly ThermalSystem _system;
    private readonly StageMatrix _matrix;
    private readonly StageCorrection _correction;
    private readonly double[] _inverseLeastHeat;
    private readonly int _cells;

    internal ImplicitSolver(ThermalSystem system)
    {
        _system = system;
        _matrix = new StageMatrix(system);
        _correction = new StageCorrection(system, _matrix);
        _cells = system.Grid.Count;
        int length = system.Matrix.VectorLength;
        _inverseLeastHeat = new double[length];
        for (int p = 0; p < _cells; p++)
        {
            _inverseLeastHeat[p] = 1 / system.Network.LeastHeat[p];
        }

        Rates = new double[length];
        BodyRates = new double[system.Bodies.Length];
        ChannelWatts = new double[HeatLedger.MostChannels];
    }

    /// <summary>Heat flows into the cells at the solution [W].</summary>
    internal double[] Rates { get; }

    /// <summary>Heat flows into the bodies at the solution [W].</summary>
    internal double[] BodyRates { get; }

    /// <summary>Heat flows from outside by channel at the solution [W].</summary>
    internal double[] ChannelWatts { get; }

    /// <summary>Number of factorisations so far, whole and of the tail.</summary>
    internal int Factorisations => _matrix.Factorisations;

    /// <summary>Number of solves so far.</summary>
    internal int Solves => _matrix.Solves;

    /// <summary>Tells that boundary conditions, contacts or links changed.</summary>
    internal void BoundariesChanged() => _matrix.BoundariesChanged();

    /// <summary>Solves a stage.</summary>
    /// <param name="a">Implicit weight times step [s].</param>
    /// <param name="seconds">Time of the stage [s].</param>
    /// <param name="known">Known part B of the cells [J].</param>
    /// <param name="bodyKnown">Known part of the bodies, as C T [J].</param>
    /// <param name="enthalpy">Guess on entry, solution on return [J].</param>
    /// <param name="bodyK">Guess on entry, solution on return [K].</param>
    /// <param name="toleranceK">Largest temperature error left [K].</param>
    /// <returns>Whether it was solved, or why not.</returns>
    internal StageOutcome Solve(double a, double seconds, double[] known, double[] bodyKnown, double[] enthalpy, double[] bodyK, double toleranceK)
    {
        double lastMiss = double.PositiveInfinity;
        double lastUnbalanced = double.PositiveInfinity;
        for (int round = 0; round <= MostRounds; round++)
        {
            double miss = Evaluate(a, seconds, known, bodyKnown, enthalpy, bodyK);
            if (miss <= toleranceK)
            {
                return StageOutcome.Solved;
            }

            double unbalanced = Unbalanced();
            double share = 1;
            while (unbalanced > NoGain * lastUnbalanced && share > LeastShare)
            {
                share /= 2;
                _correction.Apply(share, enthalpy, bodyK);
                miss = Evaluate(a, seconds, known, bodyKnown, enthalpy, bodyK);
                unbalanced = Unbalanced();
            }

            if (!double.IsFinite(unbalanced))
            {
                return StageOutcome.NotFinite;
            }

            _matrix.Prepare(a, seconds, bodyK, round > 1 && miss > 0.2 * lastMiss);
            lastMiss = miss;
            lastUnbalanced = unbalanced;
            _matrix.Solve();
            _correction.Keep(enthalpy, bodyK);
            _correction.Apply(1, enthalpy, bodyK);
        }

        return StageOutcome.TooManyRounds;
    }

    /// <summary>Solves for temperatures that do not change any more, at the boundary conditions of a time.</summary>
    /// <returns>Whether it converged.</returns>
    internal bool SolveSteady(double seconds, double[] enthalpy, double[] bodyK, double toleranceK)
    {
        const double never = 1e12;
        _system.Network.Update(enthalpy);
        for (int round = 0; round < MostRounds; round++)
        {
            _system.EvaluateAtTemperatures(seconds, bodyK, Rates, BodyRates, ChannelWatts);
            Rates.AsSpan().CopyTo(_matrix.Correction);
            BodyRates.AsSpan().CopyTo(_matrix.BodyCorrection);
            BoundariesChanged();
            _matrix.Prepare(never, seconds, bodyK, true);
            _matrix.Solve();
            double largest = 0;
            Span<double> kelvin = _system.Network.TemperatureK.AsSpan(_system.Network.Lead, _system.Grid.Count);
            for (int p = 0; p < kelvin.Length; p++)
            {
                kelvin[p] += _matrix.Correction[p];
                largest = Math.Max(largest, Math.Abs(_matrix.Correction[p]));
            }

            for (int b = 0; b < bodyK.Length; b++)
            {
                bodyK[b] += _matrix.BodyCorrection[b];
                largest = Math.Max(largest, Math.Abs(_matrix.BodyCorrection[b]));
            }

            _system.Network.EnthalpiesAt(enthalpy);
            _system.Network.Update(enthalpy);
            if (largest <= toleranceK)
            {
                _system.Evaluate(seconds, enthalpy, bodyK, Rates, BodyRates, ChannelWatts);
                BoundariesChanged();
                return true;
            }
        }

        return false;
    }

    /// <summary>Solves (C/a + K) x = vector with the last factor, without bodies; for filtering error estimates.</summary>
    internal void Filter(double[] vector) => _matrix.Filter(vector);

    private double Evaluate(double a, double seconds, double[] known, double[] bodyKnown, double[] enthalpy, double[] bodyK)
    {
        _system.Evaluate(seconds, enthalpy, bodyK, Rates, BodyRates, ChannelWatts);
        return Residual(a, known, bodyKnown, enthalpy, bodyK);
    }

    // Sum of the sizes of all residuals [W].
    private double Unbalanced() =>
        Dense.SumOfSizes(_matrix.Correction, _cells) + Dense.SumOfSizes(_matrix.BodyCorrection, _matrix.BodyCorrection.Length);

    // Right-hand side of the correction, and the residual as a temperature.
    private double Residual(double a, double[] known, double[] bodyKnown, double[] enthalpy, double[] bodyK)
    {
        double inverse = 1 / a;
        double largest = Dense.Residual(known, enthalpy, inverse, Rates, _inverseLeastHeat, _matrix.Correction, _cells);
        for (int b = 0; b < bodyK.Length; b++)
        {
            double heat = _system.Bodies[b].HeatCapacity;
            double miss = ((bodyKnown[b] - (heat * bodyK[b])) * inverse) + BodyRates[b];
            _matrix.BodyCorrection[b] = miss;
            largest = Math.Max(largest, Math.Abs(miss) / heat);
        }

        return largest * a;
    }
}
