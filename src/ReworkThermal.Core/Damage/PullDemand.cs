namespace ReworkThermal.Core.Damage;

/// <summary>How a lead is taken out of its joint, gentlest first.</summary>
public enum PullDemand
{
    /// <summary>It comes by itself.</summary>
    Free,

    /// <summary>It is nudged.</summary>
    Nudged,

    /// <summary>It is pried.</summary>
    Pried,
}
