namespace ReworkThermal.Core.Damage;

/// <summary>Roughness of the foil that a pad is made of.</summary>
public enum FoilProfile
{
    /// <summary>Ordinary foil: the peel strength of the laminate's class holds.</summary>
    Standard,

    /// <summary>Low-profile foil, which holds a third to a half as well.</summary>
    LowProfile,
}
