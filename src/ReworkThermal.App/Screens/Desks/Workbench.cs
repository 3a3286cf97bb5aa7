namespace ReworkThermal.App.Screens.Desks;

/// <summary>The engines behind the screens, with the names of what they know.</summary>
internal sealed record Workbench(
    ShelfNames Names,
    IMixDesk Mix,
    IPlanDesk Plan,
    IBenchRuns Runs,
    IBudgetDesk Budgets,
    ILessonDesk Lessons,
    IRecordDesk Records);
