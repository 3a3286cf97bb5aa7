namespace ReworkThermal.Core.Jobs.Pins;

/// <summary>The pins of a connector as its profile lists them.</summary>
/// <param name="Name">Name of the connector.</param>
/// <param name="Register">Its pins.</param>
public sealed record Pinout(string Name, PinRegister Register);
