namespace ReworkThermal.App.Screens.State;

/// <summary>Lines of a job's brief, in the order shown.</summary>
internal enum BriefField
{
    /// <summary>Name of the job.</summary>
    Label,

    /// <summary>Board profile.</summary>
    Board,

    /// <summary>Joint profile.</summary>
    Joint,

    /// <summary>Connector profile.</summary>
    Connector,

    /// <summary>Solder that arrived in the joints.</summary>
    BaseSolder,

    /// <summary>Whether lead is ruled out.</summary>
    LeadFreeOnly,
}
