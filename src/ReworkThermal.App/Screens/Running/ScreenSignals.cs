namespace ReworkThermal.App.Screens.Running;

/// <summary>What the screens do to the terminal besides showing text.</summary>
/// <param name="Ring">Rings the bell so many times.</param>
/// <param name="Leave">Ends the program in good order.</param>
internal sealed record ScreenSignals(Action<int> Ring, Action Leave);
