namespace ReworkThermal.Core.Jobs.Pins;

/// <summary>What a pin is meant to be connected to.</summary>
public abstract record PinDuty
{
    private PinDuty()
    {
    }

    /// <summary>A signal or supply that runs to a destination; pins with the same destination belong together.</summary>
    /// <param name="Destination">Where the pin's track ends, such as <c>U5.12</c> or <c>VBUS</c>.</param>
    public sealed record Wired(string Destination) : PinDuty;

    /// <summary>The board's ground.</summary>
    public sealed record Ground : PinDuty;

    /// <summary>The metal shell.</summary>
    /// <param name="Bond">Whether the board joins the shell to ground.</param>
    public sealed record Shield(ShieldBond Bond) : PinDuty;

    /// <summary>Connected to nothing.</summary>
    public sealed record NoConnect : PinDuty;
}
