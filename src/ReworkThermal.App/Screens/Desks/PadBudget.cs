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
    /// <param name="TouchesLeftOut">Touches that are not counted, because there are no temperatures for them: the budget is at least this.</param>
    internal sealed record Known(double Low, double Central, double High, string Governing, int TouchesLeftOut) : PadBudget;

    /// <summary>Cannot be reckoned.</summary>
    /// <param name="Reason">One clause: what is missing.</param>
    internal sealed record Unknown(string Reason) : PadBudget;
}
