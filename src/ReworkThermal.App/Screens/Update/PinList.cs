using System.Globalization;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;

namespace ReworkThermal.App.Screens.Update;

/// <summary>
/// Reads a list of pins as typed: <c>1=VBUS 2=GND / 3=NC 4=SHELL 7-9</c>. With a destination it is a pin that gets checks; without
/// one it is a pad. A slash begins the next row.
/// </summary>
internal static class PinList
{
    private const int Longest = 500;

    /// <summary>Reads a list.</summary>
    internal static PinListReading Read(string text, JobState job)
    {
        List<Pin> pins = [];
        List<JobEvent> pads = [];
        HashSet<PadId> seen = [];
        int row = job.Register.Pins.Count > 0 ? job.Register.Pins.Max(p => p.Row) : 1;
        double position = job.Register.Pins.Where(p => p.Row == row).Select(p => p.Position + 1).DefaultIfEmpty(0).Max();
        foreach (string word in text.Replace("/", " / ", StringComparison.Ordinal).Split((char[])[' ', ','], StringSplitOptions.RemoveEmptyEntries))
        {
            if (word == "/")
            {
                row++;
                position = 0;
                continue;
            }

            string[] parts = word.Split('=', 2);
            foreach (string name in Range(parts[0]))
            {
                if (PadId.Fault(name) is { } fault)
                {
                    return new PinListReading.Refused(fault);
                }

                PadId pad = new(name);
                if (!seen.Add(pad) || job.Pads.ContainsKey(pad))
                {
                    return new PinListReading.Refused(ScreenJobWords.PinTwice(name));
                }

                if (parts.Length == 2 && parts[1].Length == 0)
                {
                    return new PinListReading.Refused(ScreenJobWords.NoDestination(name));
                }

                if (parts.Length == 2)
                {
                    pins.Add(new Pin(pad, parts[1], row, position, Duty(parts[1])));
                }
                else
                {
                    pads.Add(new JobEvent.PadRegistered(pad, ScreenJobWords.PadDescription));
                }

                position++;
            }
        }

        if (pins.Count + pads.Count is 0 or > Longest)
        {
            return new PinListReading.Refused(ScreenJobWords.PinCount(Longest));
        }

        return PinRegister.Fault([.. job.Register.Pins, .. pins]) is { } misfit
            ? new PinListReading.Refused(misfit)
            : new PinListReading.Accepted(pins.Count > 0 ? [new JobEvent.PinsRegistered(pins), .. pads] : pads);
    }

    private static PinDuty Duty(string destination) => destination.ToUpperInvariant() switch
    {
        "GND" => new PinDuty.Ground(),
        "NC" => new PinDuty.NoConnect(),
        "SHELL" => new PinDuty.Shield(ShieldBond.Grounded),
        "SHELL-APART" => new PinDuty.Shield(ShieldBond.Separate),
        _ => new PinDuty.Wired(destination),
    };

    private static IEnumerable<string> Range(string name)
    {
        string[] ends = name.Split('-');
        if (ends.Length != 2)
        {
            return [name];
        }

        string stem = ends[0].TrimEnd("0123456789".ToCharArray());
        string last = ends[1].StartsWith(stem, StringComparison.Ordinal) ? ends[1][stem.Length..] : ends[1];
        return int.TryParse(ends[0].AsSpan(stem.Length), NumberStyles.None, CultureInfo.InvariantCulture, out int from)
            && int.TryParse(last, NumberStyles.None, CultureInfo.InvariantCulture, out int to)
            && to >= from && to - from <= Longest
                ? Enumerable.Range(from, to - from + 1).Select(n => stem + n.ToString(CultureInfo.InvariantCulture))
                : [name];
    }
}
