namespace ReworkThermal.App.Screens.State;

/// <summary>Settings of the tools in use.</summary>
internal enum ToolField
{
    /// <summary>Iron set temperature [°C]; empty when no iron is used.</summary>
    Iron,

    /// <summary>Hot air: set temperature [°C] and flow [L/min]; empty when none is used.</summary>
    Air,

    /// <summary>Preheater set temperature [°C]; empty when none is used.</summary>
    Preheat,
}
