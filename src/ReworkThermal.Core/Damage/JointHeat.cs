using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>How hot one joint of a part is.</summary>
/// <param name="Name">Name of the joint, as the user knows it.</param>
/// <param name="Coldest">Temperature of its coldest solder.</param>
/// <param name="Flow">Its flow temperature; null when that is not known: then nothing is known to flow.</param>
public sealed record JointHeat(string Name, Temperature Coldest, Temperature? Flow)
{
    /// <summary>Whether the joint is not known to be at its flow temperature and so still holds the lead.</summary>
    public bool Holds => !(Coldest >= Flow);
}
