namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>One observation against the fit.</summary>
/// <param name="Expected">What the fitted bench does: seconds to flow, or °C for a reading.</param>
/// <param name="Before">What the central bench does, likewise.</param>
/// <param name="Misfit">Distance of observation and fit in standard deviations of the measurement; not below zero for "did not flow".</param>
/// <param name="IsOutlier">Whether it was set aside because nothing within the ranges explains it together with the others.</param>
public sealed record FittedTouch(double Expected, double Before, double Misfit, bool IsOutlier);
