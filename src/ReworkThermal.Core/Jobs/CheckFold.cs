using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;

namespace ReworkThermal.Core.Jobs;

/// <summary>Collects probed checks, and forgets those whose pins were worked on afterwards.</summary>
internal sealed class CheckFold
{
    private readonly Dictionary<ElectricalCheck, (Logged<JobEvent.CheckDone> Done, bool Stale)> _last = [];
    private readonly Dictionary<PadId, HashSet<ElectricalCheck>> _byPad = [];

    internal void Take(Logged<JobEvent.CheckDone> done)
    {
        ElectricalCheck check = done.What.Check;
        _last[check] = (done, false);
        foreach (PadId pad in check.Probed)
        {
            if (!_byPad.TryGetValue(pad, out HashSet<ElectricalCheck>? checks))
            {
                _byPad[pad] = checks = [];
            }

            checks.Add(check);
        }
    }

    /// <summary>A pad was worked on: what was probed there before proves nothing now.</summary>
    internal void Disturb(PadId pad)
    {
        if (_byPad.Remove(pad, out HashSet<ElectricalCheck>? checks))
        {
            foreach (ElectricalCheck check in checks)
            {
                _last[check] = (_last[check].Done, true);
            }
        }
    }

    /// <summary>A pad was looked at: seeing it sound or wired proves nothing either way, seeing it loose or missing does.</summary>
    internal void Disturb(PadId pad, PadState seen)
    {
        if (seen is PadState.Loose or PadState.Missing)
        {
            Disturb(pad);
        }
    }

    internal CheckProgress Progress(PinRegister register) => new([.. CheckList.For(register).Select(line => Line(line.Check, line.Expected))]);

    private CheckLine Line(ElectricalCheck check, ExpectedReading expected)
    {
        if (!_last.TryGetValue(check, out (Logged<JobEvent.CheckDone> Done, bool Stale) last))
        {
            return new CheckLine(check, expected, CheckStanding.Open, null);
        }

        CheckStanding standing = last.Stale
            ? CheckStanding.Stale
            : last.Done.What.Result == CheckResult.Pass ? CheckStanding.Passed : CheckStanding.Failed;
        return new CheckLine(check, expected, standing, last.Done);
    }
}
