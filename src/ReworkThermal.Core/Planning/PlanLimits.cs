using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>Limits that every plan keeps.</summary>
public sealed record PlanLimits
{
    /// <summary>Longest single touch.</summary>
    public required Limit<Duration> MostDwell { get; init; }

    /// <summary>Longest touch with hot air, which warms the joint slowly.</summary>
    public required Limit<Duration> MostAirTime { get; init; }

    /// <summary>Highest set temperature of the iron.</summary>
    public required Limit<Temperature> MostIronSetting { get; init; }

    /// <summary>Time to draw solder out or to set the leg once everything has flowed; part of the dwell.</summary>
    public required Limit<Duration> WorkingTime { get; init; }

    /// <summary>How far the coldest solder in the barrel must pass the flow temperature.</summary>
    public required Limit<TemperatureDelta> Superheat { get; init; }

    /// <summary>Highest temperature between pad and laminate.</summary>
    public required Limit<Temperature> MostPadTemperature { get; init; }

    /// <summary>Share of the pad's heat budget that the whole job may use.</summary>
    public required Limit<Ratio> MostBudgetShare { get; init; }

    /// <summary>Highest board temperature by preheat.</summary>
    public required Limit<Temperature> MostPreheat { get; init; }

    /// <summary>Largest share of the mix that may be added alloy.</summary>
    public required Limit<Ratio> MostAddedShare { get; init; }

    /// <summary>Most passes before the refit.</summary>
    public required Limit<int> MostPasses { get; init; }

    /// <summary>Whether nothing that contains lead may be brought to the joint.</summary>
    public required bool LeadFreeOnly { get; init; }
}
