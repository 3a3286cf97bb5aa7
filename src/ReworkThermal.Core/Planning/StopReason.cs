namespace ReworkThermal.Core.Planning;

/// <summary>What sets the time at which a touch must end.</summary>
public enum StopReason
{
    /// <summary>The longest touch that the limits allow.</summary>
    LongestTouch,

    /// <summary>The temperature between pad and laminate reaches its limit.</summary>
    PadTemperature,

    /// <summary>The touch has used its part of the heat budget.</summary>
    HeatBudget,

    /// <summary>A part near the joint reaches the highest temperature it bears.</summary>
    Neighbour,
}
