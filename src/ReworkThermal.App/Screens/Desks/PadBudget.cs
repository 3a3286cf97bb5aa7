namespace ReworkThermal.App.Screens.Desks;

/// <summary>Heat budget of one pad.</summary>
internal abstract record PadBudget
{
    private PadBudget()
    {
    }

    /// <summary>Reckoned.</summary>
    /// <param name="Low">Share used at the favourable end [1].</param>
    /// <param name="Central">Share used with central values [1].</param>
    /// <param name="High">Share used at the unfavourable end [1].</param>
    /// <param name="Governing">Gauge that governs, in words.</param>
    /// <param name="Remark">What was assumed or left out; empty when nothing.</param>
    internal sealed record Known(double Low, double Central, double High, string Governing, string Remark) : PadBudget;

    /// <summary>Cannot be reckoned.</summary>
    /// <param name="Reason">One clause: what is missing.</param>
    internal sealed record Unknown(string Reason) : PadBudget;
}
