using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;

namespace ReworkThermal.Core.Jobs;

/// <summary>Collects the ledgers of pads while the entries of a job are walked.</summary>
internal sealed class PadFold
{
    private readonly Dictionary<PadId, Draft> _drafts = [];
    private PriorCondition? _priorOfAll;

    internal void Add(IReadOnlyList<Pin> pins)
    {
        foreach (Pin pin in pins)
        {
            _drafts.TryAdd(pin.Number, new Draft { Pin = pin, Prior = _priorOfAll });
        }
    }

    internal void Add(JobEvent.PadRegistered pad) =>
        _drafts.TryAdd(pad.Pad, new Draft { Description = pad.Description, Joint = pad.Joint, Prior = _priorOfAll });

    internal void See(PadId pad, PadState state)
    {
        if (_drafts.TryGetValue(pad, out Draft? draft))
        {
            draft.State = state;
            if (draft.Heats.Count == 0)
            {
                draft.AsArrived = state;
            }
        }
    }

    internal void State(IReadOnlyList<PadId> pads, PriorCondition heat)
    {
        if (pads.Count == 0)
        {
            _priorOfAll = heat;
        }

        foreach (PadId pad in pads.Count == 0 ? [.. _drafts.Keys] : pads)
        {
            if (_drafts.TryGetValue(pad, out Draft? draft))
            {
                draft.Prior = heat;
            }
        }
    }

    internal void Heat(PadHeat heat)
    {
        if (_drafts.TryGetValue(heat.Share.Pad, out Draft? draft))
        {
            draft.Heats.Add(heat);
        }
    }

    internal void Wire(JumperWire wire)
    {
        foreach (PadId end in (ReadOnlySpan<PadId>)[wire.From, wire.To])
        {
            if (_drafts.TryGetValue(end, out Draft? draft) && draft.Pin is not null)
            {
                draft.State = PadState.Wired;
            }
        }
    }

    internal IReadOnlyDictionary<PadId, PadLedger> Ledgers()
    {
        OrderedDictionary<PadId, PadLedger> ledgers = [];
        IEnumerable<KeyValuePair<PadId, Draft>> pinsFirst = _drafts
            .OrderBy(d => d.Value.Pin is null)
            .ThenBy(d => d.Value.Pin?.Row)
            .ThenBy(d => d.Value.Pin?.Position);
        foreach ((PadId pad, Draft draft) in pinsFirst)
        {
            ledgers.Add(pad, new PadLedger(
                pad,
                draft.Pin,
                draft.Description,
                draft.AsArrived,
                draft.State,
                draft.Prior,
                [.. draft.Heats.OrderBy(h => h.Touch.StartedAt).ThenBy(h => h.Number)],
                draft.Joint));
        }

        return ledgers;
    }

    private sealed class Draft
    {
        internal Pin? Pin { get; init; }

        internal string? Description { get; init; }

        internal string? Joint { get; init; }

        internal PadState? AsArrived { get; set; }

        internal PadState? State { get; set; }

        internal PriorCondition? Prior { get; set; }

        internal List<PadHeat> Heats { get; } = [];
    }
}
