namespace ReworkThermal.Core.Jobs.Pins;

/// <summary>The pins of a job's connector and who is whose neighbour.</summary>
public sealed class PinRegister
{
    /// <summary>Most pins a register holds.</summary>
    public const int MostPins = 2000;

    private readonly Dictionary<PadId, Pin> _byNumber;

    private PinRegister(IReadOnlyList<Pin> pins)
    {
        Pins = pins;
        _byNumber = pins.ToDictionary(p => p.Number);
        NeighbourPairs = FindNeighbours(pins);
    }

    /// <summary>Pins by row, then by position.</summary>
    public IReadOnlyList<Pin> Pins { get; }

    /// <summary>Every pair of neighbours once, the earlier pin of <see cref="Pins"/> first.</summary>
    public IReadOnlyList<(Pin First, Pin Second)> NeighbourPairs { get; }

    /// <summary>Builds a register.</summary>
    /// <param name="pins">The pins in any order.</param>
    /// <returns>The register.</returns>
    /// <exception cref="ArgumentException">The pins do not fit together; see <see cref="Fault"/>.</exception>
    public static PinRegister Of(IEnumerable<Pin> pins)
    {
        ArgumentNullException.ThrowIfNull(pins);
        List<Pin> ordered = [.. pins.OrderBy(p => p.Row).ThenBy(p => p.Position).ThenBy(p => p.Number)];
        return Fault(ordered) is { } fault ? throw new ArgumentException(fault, nameof(pins)) : new PinRegister(ordered);
    }

    /// <summary>Says why pins do not fit together.</summary>
    /// <param name="pins">The pins.</param>
    /// <returns>Null when they do, else one clause that names the pin.</returns>
    public static string? Fault(IReadOnlyCollection<Pin> pins)
    {
        ArgumentNullException.ThrowIfNull(pins);
        if (pins.Count > MostPins)
        {
            return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"a register holds at most {MostPins} pins; got {pins.Count}");
        }

        HashSet<PadId> numbers = [];
        Dictionary<(int Row, double Position), PadId> places = [];
        foreach (Pin pin in pins)
        {
            string? fault = FaultOf(pin);
            if (fault is not null)
            {
                return $"pin {pin.Number}: {fault}";
            }

            if (!numbers.Add(pin.Number))
            {
                return $"pin {pin.Number}: the number is used twice";
            }

            if (!places.TryAdd((pin.Row, pin.Position), pin.Number))
            {
                return $"pin {pin.Number}: stands where pin {places[(pin.Row, pin.Position)]} stands";
            }
        }

        return null;
    }

    /// <summary>Finds a pin.</summary>
    /// <param name="number">Its number.</param>
    /// <returns>The pin, or null when the pad is no pin of this register.</returns>
    public Pin? Find(PadId number) => _byNumber.GetValueOrDefault(number);

    private static string? FaultOf(Pin pin)
    {
        if (string.IsNullOrWhiteSpace(pin.Name) || pin.Name.Length > 60)
        {
            return "the name must have 1 to 60 characters";
        }

        if (pin.Row is < 1 or > 1000)
        {
            return "the row must be a whole number from 1 to 1000";
        }

        if (!double.IsFinite(pin.Position) || Math.Abs(pin.Position) > 10_000)
        {
            return "the position must be a number of pitches between -10000 and 10000";
        }

        if (pin.Duty is PinDuty.Wired { Destination: string destination } && (string.IsNullOrWhiteSpace(destination) || destination.Length > 100))
        {
            return "the destination must have 1 to 100 characters";
        }

        return pin.Current is { Amperes: double amperes } && !(double.IsFinite(amperes) && amperes >= 0) ? "the current must not be negative" : null;
    }

    private static List<(Pin First, Pin Second)> FindNeighbours(IReadOnlyList<Pin> pins)
    {
        List<(Pin First, Pin Second)> pairs = [];
        Dictionary<int, List<Pin>> rows = pins.GroupBy(p => p.Row).ToDictionary(g => g.Key, g => g.ToList());
        foreach ((int number, List<Pin> row) in rows.OrderBy(r => r.Key))
        {
            pairs.AddRange(row.Zip(row.Skip(1)));
            if (rows.TryGetValue(number + 1, out List<Pin>? next))
            {
                pairs.AddRange(from pin in row
                               from other in next
                               where Math.Abs(pin.Position - other.Position) < 1
                               select (pin, other));
            }
        }

        return pairs;
    }
}
