using ReworkThermal.Core.Boards;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>The joint of a job on its board.</summary>
internal abstract record SiteChoice
{
    private SiteChoice()
    {
    }

    /// <summary>It is known.</summary>
    internal sealed record Chosen(JointSite Site) : SiteChoice;

    /// <summary>It is not.</summary>
    internal sealed record Missing(string Reason) : SiteChoice;
}
