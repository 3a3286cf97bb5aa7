namespace ReworkThermal.App.Screens.State;

/// <summary>Lines of a plan request, in the order shown.</summary>
internal enum PlanField
{
    /// <summary>Board profile.</summary>
    Board,

    /// <summary>Joint profile.</summary>
    Joint,

    /// <summary>Side the tool comes from.</summary>
    Side,

    /// <summary>Solder in the joint.</summary>
    BaseSolder,

    /// <summary>Alloy of the refitted joint.</summary>
    Refill,

    /// <summary>What is assumed about heat before arrival.</summary>
    EarlierHeat,

    /// <summary>Pad of the job that the plan is for: it starts from what the pad has had; none when it is for any pad of its kind.</summary>
    Pad,

    /// <summary>Irons at hand.</summary>
    Irons,

    /// <summary>How the tip meets the joint.</summary>
    Contact,

    /// <summary>Hot-air nozzles at hand.</summary>
    Nozzles,

    /// <summary>Flow of the hot air [L/min].</summary>
    AirLitres,

    /// <summary>Distance of nozzle and board [mm].</summary>
    AirMillimetres,

    /// <summary>Preheaters at hand.</summary>
    Preheaters,

    /// <summary>How solder is taken out.</summary>
    Removal,

    /// <summary>Diameter of the wire [mm].</summary>
    WireMillimetres,

    /// <summary>Air around the bench.</summary>
    Room,

    /// <summary>Room temperature [°C].</summary>
    AmbientCelsius,

    /// <summary>Longest touch allowed [s]; empty for the usual limit.</summary>
    MostDwellSeconds,

    /// <summary>Largest share of the heat budget the plan may use [%]; empty for the usual limit.</summary>
    MostBudgetPercent,

    /// <summary>Whether lead is ruled out.</summary>
    LeadFreeOnly,
}
