namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>Heat that came in by each channel, against what the body holds. The check that every run carries.</summary>
internal sealed class HeatLedger
{
    /// <summary>Most channels of a system: the length of every vector of heat flows by channel.</summary>
    internal const int MostChannels = 16;

    private readonly double[] _joules = new double[MostChannels];
    private double _atStart;
    private double _gross;

    /// <summary>Heat held now, over that at the start [J].</summary>
    internal double StoredJ { get; private set; }

    /// <summary>Heat in by channel [J].</summary>
    internal ReadOnlySpan<double> Joules => _joules;

    /// <summary>Difference between stored heat and heat brought in, over the heat that moved; zero when nothing moved.</summary>
    internal double BalanceError
    {
        get
        {
            double sum = 0;
            foreach (double heat in _joules)
            {
                sum += heat;
            }

            double scale = Math.Max(_gross, Math.Abs(StoredJ));
            return scale > 0 ? Math.Abs(StoredJ - sum) / scale : 0;
        }
    }

    /// <summary>Sets the heat held at the start.</summary>
    internal void Start(double heldJ) => _atStart = heldJ;

    /// <summary>Books one step.</summary>
    /// <param name="seconds">Length of the step [s].</param>
    /// <param name="weightOuter">Weight of begin and middle.</param>
    /// <param name="weightEnd">Weight of the end.</param>
    /// <param name="begin">Heat flows by channel at the begin [W].</param>
    /// <param name="middle">Heat flows at the inner stage [W].</param>
    /// <param name="end">Heat flows at the end [W].</param>
    /// <param name="heldJ">Heat held after the step [J].</param>
    internal void Book(double seconds, double weightOuter, double weightEnd, double[] begin, double[] middle, double[] end, double heldJ)
    {
        for (int c = 0; c < _joules.Length; c++)
        {
            double heat = seconds * ((weightOuter * (begin[c] + middle[c])) + (weightEnd * end[c]));
            _joules[c] += heat;
            _gross += Math.Abs(heat);
        }

        StoredJ = heldJ - _atStart;
    }
}
