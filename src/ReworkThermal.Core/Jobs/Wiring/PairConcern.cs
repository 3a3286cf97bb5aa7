namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Why a pair over jumper wires may not work.</summary>
public enum PairConcern
{
    /// <summary>The legs differ by more of the bit time than the limit.</summary>
    Skew,

    /// <summary>Only one leg is a wire.</summary>
    OneLegOnly,

    /// <summary>The wires are not kept together: their impedance is high and unknown.</summary>
    NotTogether,

    /// <summary>Fast enough that it must be tried and tested.</summary>
    TryAndTest,

    /// <summary>So fast that wire seldom works.</summary>
    SeldomRepairable,
}
