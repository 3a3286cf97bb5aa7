namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>A body at one temperature beside the meshed one: half of a tip, a connector shell.</summary>
internal sealed class LumpedBody
{
    /// <summary>Heat capacity [J/K], above zero.</summary>
    internal required double HeatCapacity { get; init; }

    /// <summary>Temperature at the start [K].</summary>
    internal double TemperatureK { get; init; }

    /// <summary>Loss to the room [W/K].</summary>
    internal double Loss { get; init; }

    /// <summary>Room temperature for the loss.</summary>
    internal TimeCourse? Room { get; init; }

    /// <summary>Ledger channel of loss and heater.</summary>
    internal int Channel { get; init; }

    /// <summary>Greatest heater power [W], zero without a heater.</summary>
    internal double HeaterLimitW { get; init; }

    /// <summary>Temperature the heater holds [K].</summary>
    internal double SetK { get; init; }

    /// <summary>
    /// Range below the set temperature over which the controller goes from off to full power [K]. A good controller holds its sensor
    /// within a kelvin or two; the width is a modelling choice.
    /// </summary>
    internal double BandK { get; init; } = 2;

    /// <summary>Net heat flow from outside the model (heater, room) [W] and its slope with temperature [W/K].</summary>
    internal (double Watts, double Slope) Outside(double seconds, double kelvin)
    {
        double watts = 0;
        double slope = 0;
        if (Loss > 0 && Room is not null)
        {
            watts += Loss * (Room.KelvinAt(seconds) - kelvin);
            slope -= Loss;
        }

        if (HeaterLimitW > 0)
        {
            double share = (SetK - kelvin) / BandK;
            watts += HeaterLimitW * Math.Clamp(share, 0, 1);
            slope -= share is >= 0 and < 1 ? HeaterLimitW / BandK : 0;
        }

        return (watts, slope);
    }
}
