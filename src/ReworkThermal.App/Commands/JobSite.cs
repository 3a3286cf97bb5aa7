using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;

namespace ReworkThermal.App.Commands;

/// <summary>Where the pads of a job are, as far as its brief says it.</summary>
internal abstract record JobSite
{
    private JobSite()
    {
    }

    /// <summary>Joint, board and solder are known.</summary>
    /// <param name="Site">The joint on its board.</param>
    /// <param name="BaseSolder">Solder that arrived in the joints.</param>
    /// <param name="Notes">What was assumed, one sentence each.</param>
    internal sealed record Known(JointSite Site, MassFractions BaseSolder, IReadOnlyList<string> Notes) : JobSite;

    /// <summary>They are not.</summary>
    /// <param name="Reason">What is missing and what would be right.</param>
    internal sealed record Unknown(string Reason) : JobSite;
}
