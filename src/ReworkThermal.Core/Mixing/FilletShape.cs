namespace ReworkThermal.Core.Mixing;

/// <summary>Outline of a solder fillet between leg and pad edge.</summary>
public enum FilletShape
{
    /// <summary>Concave, a quarter ellipse: a well-wetted joint with the least solder.</summary>
    Hollow,

    /// <summary>Straight from leg to pad edge: a full joint, the most solder that is still not bulging.</summary>
    Straight,
}
