namespace ReworkThermal.App.Commands;

/// <summary>What is taken where nobody says otherwise; an answer that rests on one of these says so, and the screens show it.</summary>
internal static class UsualBench
{
    /// <summary>Solder of a joint: a common lead-free one.</summary>
    internal const string Solder = "Sn96.5Ag3Cu0.5";

    /// <summary>Air around the bench, a file of profiles/rooms.</summary>
    internal const string Room = "still-air";

    /// <summary>How molten solder is taken out, by the name in profiles/removal.</summary>
    internal const string Removal = "braid";
}
