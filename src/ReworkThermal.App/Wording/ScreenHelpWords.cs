using ReworkThermal.App.Screens.State;

namespace ReworkThermal.App.Wording;

/// <summary>Help by place, and the cautions. General: nothing here replaces training, local rules or a licensed trade.</summary>
internal static class ScreenHelpWords
{
    internal const string Title = "Keys and words";
    internal const string CautionsTitle = "Cautions";
    internal const string CautionsRead = "Enter: I have read this";
    internal const string CautionsSource = "Common practice, no source. The rules of your country, workplace and the device's maker come first.";

    internal static readonly (string Keys, string Text)[] Everywhere =
    [
        ("1 to 5", "go to job, mix, plan, clock, record; with Alt also out of a text field"),
        ("?  !", "this help; the cautions"),
        ("Q", "leave the program (asks first); Esc never leaves"),
        ("Ctrl+W", "when the store cannot be written (NOT SAVED): writes all jobs to another file, where the work goes on"),
        ("Ctrl+Z", "step out to the shell, 'fg' comes back"),
        ("", "Everything is written to the job's file the moment it is confirmed; there is nothing to save."),
    ];

    internal static readonly string[] Cautions =
    [
        "Power off, unplugged, batteries out, capacitors discharged and measured before any tool touches the board. Mains, medical, vehicle and safety equipment is for those licensed to repair it.",
        "Tip, nozzle, board and preheater burn skin; the board stays hot for minutes. Keep paper, cloth and solvents away.",
        "Fumes of flux and charred laminate harm lungs and eyes: extract them at the source. Never scrape or sand the board dry.",
        "Lead: wash hands, no food or smoking at the bench, collect the waste apart. It harms children, born and unborn, most. Check what the law says for lead in a lead-free product.",
        "Molten solder and cut leads fly, a heated capacitor or battery can burst: wear eye protection.",
        "Bismuth with lead leaves a residue that melts near 96 °C: clean it out before the refit.",
        "Never pull while any joint of the part is not molten. The figures here are estimates: your eye and hand decide, and no budget makes a pad safe.",
    ];

    internal static IReadOnlyList<(string Keys, string Text)> Of(Place place) => place switch
    {
        Place.Job =>
        [
            ("Enter", "edit a line; on a pin: take it to the clock"),
            ("A", "add pins: 1=VBUS 2=GND 3=NC 4=SHELL, ranges 5-9, a slash begins the next row"),
            ("S L M W", "the pad is sound, loose, missing, wired, as seen now"),
            ("H, Shift+H", "heat before arrival for this pad, for all: assembly, reworked, scorched"),
            ("/ N J", "filter pins; note; list of jobs"),
            ("heat budget", "share of what the pad tolerates that is used; the gauge that is worst sets it; (low to high)"),
        ],
        Place.Mix =>
        [
            ("left right", "change the line; PgUp PgDn in steps of 5; Enter to type or choose"),
            ("K", "keep the figures as a note in the record"),
            ("flow", "97 % of the mass is liquid: from here on the joint moves"),
            ("Scheil end", "last liquid on real cooling; below it nothing moves"),
            ("residue", "what the passes leave of the mix in the refitted joint"),
        ],
        Place.Plan =>
        [
            ("left right", "choose; Enter to type; what is wrong stands beside the line"),
            ("R, Esc", "run; break off. Plans show at once, their spread when 200 benches are sampled"),
            ("for pad", "the plan starts from what this pad has had, and keeps within what it has left"),
            ("K", "keep the chosen plan in the job: the clock takes its settings"),
            ("V", "from answer to request and back"),
            ("dwell, stop", "how long a touch should last; when it must end whatever happens"),
        ],
        Place.Clock =>
        [
            ("Space Enter", "start and stop a touch; a pedal that sends one of them does it too"),
            ("", "two strokes within 0.7 s count as one, for a pedal held down"),
            ("F", "it flows now; after the touch Y or N. Both teach later plans how this board takes heat"),
            ("up down U S", "pad; what the touch is for; whether solder goes in"),
            ("I A B", "iron, hot air, board heat; empty when not used"),
            ("begins at", "the pad is still warm from the touches before; the trace takes that heat along"),
            ("bell", "once at the dwell, three times at the stop of the kept plan"),
        ],
        Place.Record =>
        [
            ("V", "an entry was a mistake: it stays readable and does not count; needs a reason"),
            ("W", "write the record to hand over, as a page and as text, into this folder"),
            ("N X", "note; write all entries as JSON, for another program"),
            ("C", "checks and back; P pass, F fail, R reading in ohm or OL"),
        ],
        _ => throw new ArgumentOutOfRangeException(nameof(place)),
    };
}
