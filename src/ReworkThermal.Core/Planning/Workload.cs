using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>What a search works on: the request with everything that follows from it directly.</summary>
internal sealed class Workload
{
    internal Workload(PlanRequest request, ThroughJoint joint, DamageModel damage, SolderProperties properties)
    {
        Request = request;
        Joint = joint;
        Properties = properties;
        Damage = damage;
        BoardThickness = request.Site.Board.StackUp.Thickness;
        Solder = JointSolder.ChargeIn(joint, BoardThickness, request.BaseSolder.Fractions, properties);
    }

    internal PlanRequest Request { get; }

    internal ThroughJoint Joint { get; }

    internal DamageModel Damage { get; }

    internal Length BoardThickness { get; }

    /// <summary>Solder in the joint now.</summary>
    internal SolderCharge Solder { get; }

    internal PlanLimits Limits => Request.Limits;

    /// <summary>Density and conductivity rules.</summary>
    internal SolderProperties Properties { get; }

    /// <summary>Temperature that the coldest solder must reach for a flow temperature [°C].</summary>
    internal double NeededC(double flowC) => flowC + Limits.Superheat.Value.Kelvins;
}
