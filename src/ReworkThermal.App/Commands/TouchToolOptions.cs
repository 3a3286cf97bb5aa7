using System.CommandLine;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Tools;
using UnitsNet;
using ToolSetting = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.App.Commands;

/// <summary>Options that say which tools gave heat and how they were set.</summary>
internal sealed class TouchToolOptions
{

    private readonly Option<string?> _iron = new("--iron") { Description = HelpText.IronName, HelpName = "name" };
    private readonly Option<double?> _ironSet = Numbers.Option("--iron-set", HelpText.IronSet, AskLimits.LeastIronC, AskLimits.MostIronC, "°C");
    private readonly Option<string?> _air = new("--air") { Description = HelpText.AirName, HelpName = "name" };
    private readonly Option<double?> _airSet = Numbers.Option("--air-set", HelpText.AirSet, AskLimits.LeastAirC, AskLimits.MostAirC, "°C");
    private readonly Option<double?> _airFlow = Numbers.Option("--air-flow", HelpText.AirFlow, AskLimits.LeastAirFlow, AskLimits.MostAirFlow, "L/min");
    private readonly Option<double?> _airDistance = Numbers.Option("--air-distance", HelpText.AirDistance, 1, 1000, "mm");
    private readonly Option<string?> _preheater = new("--preheater") { Description = HelpText.PreheaterName, HelpName = "name" };
    private readonly Option<double?> _preheatSet = Numbers.Option("--preheat-set", HelpText.PreheatSet, 30, 1000, "°C");
    private readonly Option<double?> _bath = Numbers.Option("--bath", HelpText.Bath, 100, 500, "°C");
    private readonly Option<double?> _board = Numbers.Option("--board-temp", HelpText.BoardTemperature, -20, 250, "°C");
    private readonly Option<ContactState?> _contact = Choice.Option<ContactState>("--contact", HelpText.Contact);
    private readonly Option<BoardSide?> _side = Choice.Option<BoardSide>("--side", HelpText.Side);

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        foreach (Option option in (Option[])[_iron, _ironSet, _contact, _air, _airSet, _airFlow, _airDistance, _preheater, _preheatSet, _bath, _board, _side])
        {
            command.Add(option);
        }
    }

    /// <summary>Reads the tools.</summary>
    /// <param name="parse">The command line.</param>
    /// <param name="use">Tools and settings, the one in the hand first, none when none is named; board temperature and side.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal string? Read(ParseResult parse, out ToolUse use)
    {
        List<ToolSetting> read = [];
        use = new ToolUse(read, Celsius(parse.GetValue(_board)), parse.GetValue(_side));
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

        if (iron is null && parse.GetValue(_contact) is not null)
        {
            return Refusals.OnlyWith("--contact", "--iron");
        }

        if (air is null && parse.GetValue(_airDistance) is not null)
        {
            return Refusals.OnlyWith("--air-distance", "--air");
        }

        if ((heater is null) != (heaterSet is null))
        {
            return Refusals.BothOrNone("--preheater", "--preheat-set");
        }

        if (iron is not null)
        {
            read.Add(new ToolSetting.Iron(iron, Celsius(ironSet)!.Value, parse.GetValue(_contact)));
        }

        if (air is not null)
        {
            read.Add(new ToolSetting.HotAir(air, Celsius(airSet)!.Value, VolumeFlow.FromLitersPerMinute(flow!.Value), parse.GetValue(_airDistance) is { } mm ? Length.FromMillimeters(mm) : null));
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
