using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Profiles;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Requests;

/// <summary>Reads a plan request (REQUEST.toml) against the workshop it refers to.</summary>
public static class PlanRequestFile
{
    private const double TrialAirC = 350;

    /// <summary>Reads a request.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="workshop">What it may refer to.</param>
    /// <returns>The request.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order; file, line and field are named.</exception>
    public static PlanRequest Read(string path, Workshop workshop)
    {
        ArgumentNullException.ThrowIfNull(workshop);
        FieldReader file = FieldReader.Open(path);
        List<string> assumed = [];
        UsualTools usual = new();
        string jointName = file.Text("joint");
        JointSite site = ReadSite(file, jointName, workshop);
        PlanRequest request = new()
        {
            Title = file.Text("title"),
            BoardName = file.Text("board"),
            JointName = jointName,
            Site = site,
            Side = usual.SideOr(file.OneOfOrNull<BoardSide>("side"), site.Joint),
            BaseSolder = ReadSolder(file, "solder", workshop),
            Refill = ReadSolder(file, "refill", workshop),
            Prior = ReadPrior(file, workshop),
            Bench = ReadBench(file.Table("bench"), workshop, usual, assumed),
            Limits = ReadLimits(file.TableOrNull("limits"), workshop.Planning.Limits, assumed),
            Scatter = workshop.Scatter,
            Advice = workshop.Planning.Advice,
            Assumed = assumed,
        };
        file.Finish();
        return request with { Assumed = [.. usual.Assumed, .. assumed] };
    }

    private static JointSite ReadSite(FieldReader file, string jointName, Workshop workshop)
    {
        Board board = file.OneOf("board", workshop.Profiles.Boards);
        JointProfile joint = file.OneOf("joint", workshop.Profiles.Joints);
        try
        {
            return joint.On(board);
        }
        catch (ImpossibleGeometryException misfit)
        {
            throw file.Wrong("joint", $"'{BadValue.Shown(jointName)}' does not fit the board: {misfit.Message}");
        }
    }

    private static NamedSolder ReadSolder(FieldReader file, string field, Workshop workshop)
    {
        string text = file.Text(field);
        return workshop.Alloys.Find(text) switch
        {
            DesignationReading.Accepted accepted => new NamedSolder(text, accepted.Fractions),
            DesignationReading.Refused refused => throw file.Wrong(field, refused.Reason),
            _ => throw new InvalidOperationException("unknown kind of reading"),
        };
    }

    private static PriorHeat ReadPrior(FieldReader file, Workshop workshop) =>
        file.OneOf("earlier_heat", workshop.Limits.Priors.ToDictionary(p => p.Name, StringComparer.Ordinal));

    private static Bench ReadBench(FieldReader bench, Workshop workshop, UsualTools usual, List<string> assumed)
    {
        IReadOnlyList<Alloy> dilutions = workshop.Alloys.UsualDilutions;
        if (bench.Has("dilution_alloys"))
        {
            dilutions = Chosen(bench, "dilution_alloys", workshop.Alloys.Dilutions.ToDictionary(a => a.Name, StringComparer.Ordinal), 0);
        }
        else
        {
            assumed.Add($"all {dilutions.Count.ToString(CultureInfo.InvariantCulture)} dilution alloys of the alloys folder are at hand, because the request lists none");
        }

        Surroundings room = bench.OneOf("room", workshop.Profiles.Rooms) with
        {
            Room = bench.Quantity("ambient", UnitTable.Temperatures, LimitRanges.LeastAmbient, LimitRanges.MostAmbient),
        };
        return new Bench
        {
            Room = room,
            Irons = Chosen(bench, "irons", workshop.Profiles.Irons, 1),
            Contact = workshop.Profiles.Contacts[usual.ContactOr(bench.OneOfOrNull<ContactState>("contact"))] with { Flux = usual.FluxOr(bench.OneOfOrNull<FluxState>("flux")) },
            Air = ReadAir(bench, workshop, room, usual),
            Preheaters = Chosen(bench, "preheaters", workshop.Profiles.Preheaters, 0),
            Dilutions = dilutions,
            Removal = bench.OneOf("removal", workshop.Removals.ToDictionary(r => r.Name, StringComparer.Ordinal)),
            WireDiameter = bench.Quantity("wire_diameter", UnitTable.Lengths, LimitRanges.LeastWire, LimitRanges.MostWire),
            WireFlux = workshop.Wire.FluxShare.Central,
            FluxDensity = workshop.Wire.FluxDensity.Central,
        };
    }

    private static List<HotAir> ReadAir(FieldReader bench, Workshop workshop, Surroundings room, UsualTools usual)
    {
        if (!bench.Has("nozzles"))
        {
            return [];
        }

        List<AirNozzle> nozzles = Chosen(bench, "nozzles", workshop.Profiles.Nozzles, 1);
        VolumeFlow flow = bench.Quantity("air_flow", UnitTable.VolumeFlows, LimitRanges.LeastAirFlow, LimitRanges.MostAirFlow);
        Length? distance = bench.QuantityOrNull("air_distance", UnitTable.Lengths, LimitRanges.LeastAirDistance, LimitRanges.MostAirDistance);
        ToolShelf shelf = new(workshop.Profiles, room);
        foreach (AirNozzle nozzle in nozzles)
        {
            // Whether flow and distance suit the nozzle does not depend on the temperature by much; the middle of its range tells.
            Temperature trial = Temperature.FromDegreesCelsius(Math.Min(TrialAirC, nozzle.MostSetting.DegreesCelsius));
            if (shelf.Jet(nozzle, trial, flow, distance, usual) is SettingOutcome<JetSource>.Refused refused)
            {
                throw bench.Wrong("nozzles", refused.Reason);
            }
        }

        return [.. nozzles.Select(n => new HotAir(n, flow, usual.DistanceOr(distance, n)))];
    }

    private static List<T> Chosen<T>(FieldReader bench, string field, IReadOnlyDictionary<string, T> shelf, int least)
    {
        List<T> chosen = [];
        foreach (string name in bench.Texts(field))
        {
            chosen.Add(shelf.TryGetValue(name, out T? item)
                ? item
                : throw bench.Wrong(field, $"'{BadValue.Shown(name)}' is not known; choose from {string.Join(", ", shelf.Keys)}"));
        }

        return chosen.Count >= least
            ? chosen
            : throw bench.Wrong(field, $"must name at least one of {string.Join(", ", shelf.Keys)}");
    }

    private static PlanLimits ReadLimits(FieldReader? table, PlanLimits usual, List<string> assumed)
    {
        LimitFields fields = new(table);
        PlanLimits limits = new()
        {
            MostDwell = fields.Read("most_dwell", UnitTable.Durations, LimitRanges.LeastDwell, LimitRanges.MostDwell, usual.MostDwell),
            MostAirTime = fields.Read("most_air_time", UnitTable.Durations, LimitRanges.LeastDwell, LimitRanges.MostAirTime, usual.MostAirTime),
            AirLead = fields.Read("air_lead", UnitTable.Durations, Duration.Zero, LimitRanges.MostAirTime, usual.AirLead),
            MostIronSetting = fields.Read("most_iron_setting", UnitTable.Temperatures, LimitRanges.LeastIron, LimitRanges.MostIron, usual.MostIronSetting),
            WorkingTime = fields.Read("working_time", UnitTable.Durations, Duration.Zero, LimitRanges.MostWorkingTime, usual.WorkingTime),
            Superheat = fields.Read("superheat", UnitTable.TemperatureDeltas, LimitRanges.LeastSuperheat, LimitRanges.MostSuperheat, usual.Superheat),
            MostPadTemperature = fields.Read("most_pad_temperature", UnitTable.Temperatures, LimitRanges.LeastPad, LimitRanges.MostPad, usual.MostPadTemperature),
            MostBudgetShare = fields.Read("most_budget_share", UnitTable.Ratios, LimitRanges.LeastBudget, LimitRanges.MostBudget, usual.MostBudgetShare),
            MostBudgetAfter = fields.Read("most_budget_after", UnitTable.Ratios, LimitRanges.LeastBudget, LimitRanges.MostBudgetAfter, usual.MostBudgetAfter),
            MostPreheat = fields.Read("most_preheat", UnitTable.Temperatures, LimitRanges.LeastPreheat, LimitRanges.MostPreheat, usual.MostPreheat),
            MostAddedShare = fields.Read("most_added_share", UnitTable.Ratios, Ratio.Zero, LimitRanges.MostAddedShare, usual.MostAddedShare),
            MostPasses = fields.Read("most_passes", 1, LimitRanges.MostPasses, usual.MostPasses),
            PartRoom = fields.Read("part_room", UnitTable.TemperatureDeltas, TemperatureDelta.Zero, LimitRanges.MostPartRoom, usual.PartRoom),
            PartLag = fields.Read("part_lag", UnitTable.Durations, Duration.Zero, LimitRanges.MostPartLag, usual.PartLag),
            LeadFreeOnly = table is not null && table.Has("lead_free_only") && table.Truth("lead_free_only"),
        };
        assumed.AddRange(fields.Said());
        return limits;
    }

    /// <summary>Limits in a request; what it does not set is taken from the defaults and said.</summary>
    private sealed class LimitFields(FieldReader? table)
    {
        private readonly List<string> _usual = [];

        private static readonly Provenance _request = new(Limit<int>.RequestSource, EvidenceMark.Judgement);

        internal Limit<TQuantity> Read<TQuantity, TUnit>(
            string name,
            Quantity<TQuantity, TUnit> kind,
            TQuantity least,
            TQuantity most,
            Limit<TQuantity> usual)
            where TQuantity : struct, IComparable<TQuantity>
            where TUnit : struct, Enum
        {
            return table is not null && table.Has(name)
                ? new Limit<TQuantity>(table.Quantity(name, kind, least, most), _request, string.Empty)
                : Assume(name, usual);
        }

        internal Limit<int> Read(string name, int least, int most, Limit<int> usual) => table is not null && table.Has(name)
            ? new Limit<int>(table.Whole(name, least, most), _request, string.Empty)
            : Assume(name, usual);

        /// <summary>Which limits the request does not set, in one sentence; nothing when it sets them all.</summary>
        internal IEnumerable<string> Said() => _usual.Count == 0
            ? []
            : [$"limits that the request does not set are the usual ones of profiles/limits/planning.toml: {string.Join(", ", _usual)}"];

        private Limit<T> Assume<T>(string name, Limit<T> usual)
            where T : struct
        {
            _usual.Add(name);
            return usual;
        }
    }
}
