using ReworkThermal.Core.Boards;

namespace ReworkThermal.Core.Planning;

/// <summary>When a touch must end at the latest.</summary>
/// <param name="Seconds">Time from its start [s].</param>
/// <param name="Reason">What sets it.</param>
/// <param name="Part">The part that reaches its limit; null when another limit comes first.</param>
internal readonly record struct TouchEnd(double Seconds, StopReason Reason, Neighbour? Part = null);
