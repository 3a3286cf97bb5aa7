using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>Limits that every plan keeps.</summary>
public sealed record PlanLimits
{
    /// <summary>Longest single touch.</summary>
    public required Limit<Duration> MostDwell { get; init; }

    /// <summary>Longest touch with hot air, which warms the joint slowly.</summary>
    public required Limit<Duration> MostAirTime { get; init; }

    /// <summary>How long hot air blows on the joint before an iron that it helps touches.</summary>
    public required Limit<Duration> AirLead { get; init; }

    /// <summary>Highest set temperature of the iron.</summary>
    public required Limit<Temperature> MostIronSetting { get; init; }

    /// <summary>Time to draw solder out or to set the leg once everything has flowed; part of the dwell.</summary>
    public required Limit<Duration> WorkingTime { get; init; }

    /// <summary>How far the coldest solder in the barrel must pass the flow temperature.</summary>
    public required Limit<TemperatureDelta> Superheat { get; init; }

    /// <summary>Highest temperature between pad and laminate.</summary>
    public required Limit<Temperature> MostPadTemperature { get; init; }

    /// <summary>Share of the laminate's time to delamination that the whole job may use.</summary>
    public required Limit<Ratio> MostBudgetShare { get; init; }

    /// <summary>Share of its limit to which the job may bring the governing gauge of the pad's heat budget, earlier heat included.</summary>
    public required Limit<Ratio> MostBudgetAfter { get; init; }

    /// <summary>How much a touch is taken to warm a part near the joint above the board it stands on, when board temperatures are chosen.</summary>
    public required Limit<TemperatureDelta> PartRoom { get; init; }

    /// <summary>How long a part near the joint goes on warming after the tool is off: so much before its limit the touch must stop.</summary>
    public required Limit<Duration> PartLag { get; init; }

    /// <summary>Highest board temperature by preheat.</summary>
    public required Limit<Temperature> MostPreheat { get; init; }

    /// <summary>Largest share of the mix that may be added alloy.</summary>
    public required Limit<Ratio> MostAddedShare { get; init; }

    /// <summary>Most passes before the refit.</summary>
    public required Limit<int> MostPasses { get; init; }

    /// <summary>Whether nothing that contains lead may be brought to the joint.</summary>
    public required bool LeadFreeOnly { get; init; }
}
