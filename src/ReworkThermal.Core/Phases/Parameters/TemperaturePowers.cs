namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>The powers of one temperature [K] that Gibbs-energy expressions need, computed once.</summary>
internal readonly struct TemperaturePowers
{
    internal TemperaturePowers(double kelvin)
    {
        T = kelvin;
        LogT = Math.Log(kelvin);
        Square = kelvin * kelvin;
        Cube = Square * kelvin;
        Inverse = 1 / kelvin;
        Seventh = Cube * Cube * kelvin;
        InverseNinth = Inverse * Inverse / Seventh;
    }

    internal double T { get; }

    internal double LogT { get; }

    internal double Square { get; }

    internal double Cube { get; }

    internal double Inverse { get; }

    internal double Seventh { get; }

    internal double InverseNinth { get; }
}
