namespace ReworkThermal.Core.Damage;

/// <summary>How the molten solder moves along the copper.</summary>
public enum SolderMotion
{
    /// <summary>Still, as in a hole or under a tip that rests.</summary>
    Still,

    /// <summary>Flowing or stirred, as in a solder fountain.</summary>
    Flowing,
}
