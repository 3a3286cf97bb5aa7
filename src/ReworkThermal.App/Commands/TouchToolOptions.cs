using System.CommandLine;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>Options that say which tools gave heat and how they were set.</summary>
internal sealed class TouchToolOptions
{
    private static readonly Dictionary<string, ContactState> _contacts = new(StringComparer.Ordinal)
    {
        ["bare"] = ContactState.Bare,
        ["tinned"] = ContactState.Tinned,
        ["flooded"] = ContactState.Flooded,
    };

    private readonly Option<string?> _iron = new("--iron") { Description = HelpText.IronName, HelpName = "name" };
    private readonly Option<double?> _ironSet = Numbers.Option("--iron-set", HelpText.IronSet, AskLimits.LeastIronC, AskLimits.MostIronC, "°C");
    private readonly Option<string?> _air = new("--air") { Description = HelpText.AirName, HelpName = "name" };
    private readonly Option<double?> _airSet = Numbers.Option("--air-set", HelpText.AirSet, AskLimits.LeastAirC, AskLimits.MostAirC, "°C");
    private readonly Option<double?> _airFlow = Numbers.Option("--air-flow", HelpText.AirFlow, AskLimits.LeastAirFlow, AskLimits.MostAirFlow, "L/min");
    private readonly Option<string?> _preheater = new("--preheater") { Description = HelpText.PreheaterName, HelpName = "name" };
    private readonly Option<double?> _preheatSet = Numbers.Option("--preheat-set", HelpText.PreheatSet, 30, 1000, "°C");
    private readonly Option<double?> _bath = Numbers.Option("--bath", HelpText.Bath, 100, 500, "°C");
    private readonly Option<double?> _board = Numbers.Option("--board-temp", HelpText.BoardTemperature, -20, 250, "°C");
    private readonly Option<ContactState?> _contact = Choice.Option("--contact", HelpText.Contact, _contacts);

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        foreach (Option option in (Option[])[_iron, _ironSet, _air, _airSet, _airFlow, _preheater, _preheatSet, _bath, _board, _contact])
        {
            command.Add(option);
        }
    }

    /// <summary>How the tip met the joint.</summary>
    internal ContactState Contact(ParseResult parse) => parse.GetValue(_contact) ?? ContactState.Tinned;

    /// <summary>Board temperature when contact began; null when not given.</summary>
    internal Temperature? Board(ParseResult parse) => Celsius(parse.GetValue(_board));

    /// <summary>Reads the tools.</summary>
    /// <param name="parse">The command line.</param>
    /// <param name="tools">Tools and settings, the one in the hand first; empty when none is named.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal string? Read(ParseResult parse, out IReadOnlyList<ToolSetting> tools)
    {
        List<ToolSetting> read = [];
        tools = read;
        (string? iron, double? ironSet) = (parse.GetValue(_iron), parse.GetValue(_ironSet));
        (string? air, double? airSet, double? flow) = (parse.GetValue(_air), parse.GetValue(_airSet), parse.GetValue(_airFlow));
        (string? heater, double? heaterSet) = (parse.GetValue(_preheater), parse.GetValue(_preheatSet));
        if ((iron is null) != (ironSet is null))
        {
            return Refusals.BothOrNone("--iron", "--iron-set");
        }

        if ((air is null) != (airSet is null) || (air is null) != (flow is null))
        {
            return Refusals.BothOrNone("--air", "--air-set", "--air-flow");
        }

        if ((heater is null) != (heaterSet is null))
        {
            return Refusals.BothOrNone("--preheater", "--preheat-set");
        }

        if (iron is not null)
        {
            read.Add(new ToolSetting.Iron(iron, Celsius(ironSet)!.Value));
        }

        if (air is not null)
        {
            read.Add(new ToolSetting.HotAir(air, Celsius(airSet)!.Value, VolumeFlow.FromLitersPerMinute(flow!.Value)));
        }

        if (parse.GetValue(_bath) is { } bath)
        {
            read.Add(new ToolSetting.Bath(null, Temperature.FromDegreesCelsius(bath)));
        }

        if (heater is not null)
        {
            read.Add(new ToolSetting.Preheater(heater, Celsius(heaterSet)!.Value));
        }

        return null;
    }

    private static Temperature? Celsius(double? celsius) => celsius is { } value ? Temperature.FromDegreesCelsius(value) : null;
}
