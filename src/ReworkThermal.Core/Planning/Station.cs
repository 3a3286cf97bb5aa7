namespace ReworkThermal.Core.Planning;

/// <summary>A tool setting with what it does to the joint.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="Bare">Run without heat of melting: bounds every mix.</param>
/// <param name="Refit">The refit at this setting; null when it does not flow within the limits.</param>
/// <param name="Delay">Time to flow of the refill alloy over its time without heat of melting [1]; null when it does not flow.</param>
internal sealed record Station(ToolSetting Setting, TouchCourse Bare, TouchPlan? Refit, double? Delay);
