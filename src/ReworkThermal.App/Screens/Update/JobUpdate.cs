using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The job and its pins.</summary>
internal static class JobUpdate
{
    private static readonly BriefField[] _fields = Enum.GetValues<BriefField>();

    /// <summary>Pads that pass the filter, in order.</summary>
    internal static IReadOnlyList<PadLedger> Shown(BenchState state) => state.JobPlace.Filter.Length == 0
        ? state.Pads
        : [.. state.Pads.Where(p => ScreenJobWords.PadLine(p).Contains(state.JobPlace.Filter, StringComparison.OrdinalIgnoreCase))];

    internal static Step Apply(BenchState state, Press press)
    {
        IReadOnlyList<PadLedger> pads = Shown(state);
        int row = Math.Min(state.JobPlace.Row, _fields.Length + pads.Count - 1);
        if (Rows.After(row, _fields.Length + pads.Count, press) is int next)
        {
            PadId? reached = next >= _fields.Length && state.Clock.Stage is TouchStage.Ready or TouchStage.Cooling ? pads[next - _fields.Length].Pad : null;
            return new Step(state with
            {
                JobPlace = state.JobPlace with { Row = next },
                Clock = state.Clock with { Pad = reached ?? state.Clock.Pad },
            });
        }

        PadLedger? pad = row >= _fields.Length ? pads[row - _fields.Length] : null;
        return press switch
        {
            { Kind: PressKind.Enter } when pad is null => EntryOpening.Open(state, new EntryFor.Brief(_fields[row])),
            { Kind: PressKind.Enter } => new Step(state with { Place = Place.Clock, Clock = state.Clock with { Pad = pad.Pad } }),
            { Kind: PressKind.Tab } => new Step(state with { JobPlace = state.JobPlace with { Row = pad is null && pads.Count > 0 ? _fields.Length : 0 } }),
            { Letter: 'a' } => EntryOpening.Open(state, new EntryFor.Pins()),
            { Letter: 'j' } => new Step(state with { Jobs = state.Jobs with { Shown = true } }).Do(new Errand.ListJobs()),
            { Letter: '/' } => EntryOpening.Open(state, new EntryFor.Filter()),
            { Letter: 'n' } => EntryOpening.Open(state, new EntryFor.Note(pad?.Pad)),
            { Letter: 's' or 'l' or 'm' or 'w' } => Look(state, press, pad),
            { Letter: 'h' } => Heat(state, press, pad),
            _ => new Step(state),
        };
    }

    private static Step Look(BenchState state, Press press, PadLedger? pad)
    {
        if (pad is null)
        {
            return new Step(state).Complain(ScreenJobWords.ChoosePadFirst);
        }

        PadState seen = press.Letter switch
        {
            's' => PadState.Sound,
            'l' => PadState.Loose,
            'm' => PadState.Missing,
            _ => PadState.Wired,
        };
        return pad.State == seen
            ? new Step(state).Say(ScreenJobWords.AlreadyThat(pad.Pad, seen))
            : new Step(state).Record(new JobEvent.PadStateSeen(pad.Pad, seen, null)).Say(ScreenJobWords.NowThat(pad.Pad, seen));
    }

    /// <summary>Steps the assumption about earlier heat; the capital letter does it for all pads.</summary>
    private static Step Heat(BenchState state, Press press, PadLedger? pad)
    {
        bool all = press.Character.Value == 'H';
        if (state.Pads.Count == 0 || (pad is null && !all))
        {
            return new Step(state).Complain(ScreenJobWords.ChoosePadFirst);
        }

        PriorCondition? now = all ? state.Pads[0].Prior : pad!.Prior;
        PriorCondition next = now switch
        {
            PriorCondition.Sound => PriorCondition.Touched,
            PriorCondition.Touched => PriorCondition.Scorched,
            _ => PriorCondition.Sound,
        };
        IReadOnlyList<PadId> pads = all ? [] : [pad!.Pad];
        return new Step(state).Record(new JobEvent.PriorHeatStated(pads, next, null)).Say(ScreenJobWords.HeatStated(all ? null : pad!.Pad, next));
    }
}
