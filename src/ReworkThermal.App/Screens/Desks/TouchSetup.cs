using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>A touch about to begin.</summary>
/// <param name="Job">The job as it stands.</param>
/// <param name="Start">Purpose, tools, pads.</param>
/// <param name="Stop">When the tool must come off by the plan, or null without a plan.</param>
/// <param name="Bench">The bench as the plan request has it: the room.</param>
/// <param name="Began">When the tool is put on: the steady clock tells how long the board has cooled since the touch before.</param>
internal sealed record TouchSetup(JobState Job, TouchStart Start, Duration? Stop, PlanForm Bench, State.Moment Began);
