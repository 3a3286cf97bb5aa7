using ReworkThermal.App.Commands;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>What is asked about a mix; names as the data folders know them.</summary>
/// <param name="Joint">Joint profile.</param>
/// <param name="Board">Board profile.</param>
/// <param name="BaseSolder">Name or designation of the solder in the joint.</param>
/// <param name="Alloy">Name or designation of what is added.</param>
/// <param name="SharePercent">Share of the mix that is added, 0 to 90 %.</param>
/// <param name="Removal">How solder is taken out.</param>
/// <param name="Passes">Add-and-wick passes, 0 to 12.</param>
/// <param name="Refill">Name or designation of the refit alloy.</param>
internal sealed record MixQuestion(
    string Joint,
    string Board,
    string BaseSolder,
    string Alloy,
    double SharePercent,
    string Removal,
    int Passes,
    string Refill)
{
    /// <summary>Largest share that can be asked for [%].</summary>
    internal const double MostSharePercent = AskLimits.MostShare * 100;

    /// <summary>Most passes that can be asked for.</summary>
    internal const int MostPasses = AskLimits.MostPasses;

    /// <summary>Where a session begins: nothing chosen from the data folders yet.</summary>
    internal static readonly MixQuestion Usual = new(string.Empty, string.Empty, UsualBench.Solder, "Bi58Sn42", 35, string.Empty, 3, UsualBench.Solder);
}
