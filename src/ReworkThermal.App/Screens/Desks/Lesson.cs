using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>What must be known beside a timed measurement before it can teach the bench.</summary>
/// <param name="Bench">The bench as the plan request has it: side, contact, room.</param>
/// <param name="Added">Solder put in during the touch, or null.</param>
/// <param name="WhyNot">One clause: why this touch cannot teach, or null when it can.</param>
internal sealed record Lesson(PlanForm Bench, AddedSolder? Added, string? WhyNot);
