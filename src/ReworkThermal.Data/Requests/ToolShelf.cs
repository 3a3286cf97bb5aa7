using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Profiles;
using UnitsNet;
using LoggedTool = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.Data.Requests;

/// <summary>Finds the tools that a logged touch names among the profiles, and turns their settings into boundary conditions.</summary>
/// <param name="profiles">All profiles.</param>
/// <param name="room">The air around the bench.</param>
/// <param name="contact">How the tip is taken to meet the joint; a logged setting does not say it.</param>
public sealed class ToolShelf(ProfileLibrary profiles, Surroundings room, ContactState contact = ContactState.Tinned) : IToolShelf
{
    /// <summary>Distance at which a nozzle is taken to be held, in nozzle diameters; a logged setting does not say it. Judgement.</summary>
    private const double NozzleDistances = 4;

    /// <inheritdoc/>
    public ToolsOutcome Resolve(IReadOnlyList<LoggedTool> tools, Temperature? boardAtStart, Board board)
    {
        ArgumentNullException.ThrowIfNull(tools);
        ArgumentNullException.ThrowIfNull(board);
        Draft draft = new(boardAtStart ?? room.Room);
        bool heatsBoardOnly = tools.All(t => t is LoggedTool.Preheater);
        foreach (LoggedTool tool in tools)
        {
            string? fault = tool switch
            {
                LoggedTool.Iron iron => Iron(iron, draft),
                LoggedTool.HotAir air => Air(air, draft),
                LoggedTool.Preheater heater => Preheat(heater, boardAtStart, heatsBoardOnly, board, draft),
                LoggedTool.Bath bath => Bath(bath, draft),
                _ => throw new InvalidOperationException("unknown kind of tool"),
            };
            if (fault is not null)
            {
                return new ToolsOutcome.Refused(fault);
            }
        }

        if (boardAtStart is null && draft.Preheat is null)
        {
            draft.Notes.Add(string.Create(CultureInfo.InvariantCulture, $"The board is taken to start at room temperature, {room.Room.DegreesCelsius:0} °C; a board that is still warm from a touch before gets hotter."));
        }

        return new ToolsOutcome.Ready(new TouchTools
        {
            Tip = draft.Tip,
            Jet = draft.Jet,
            Preheat = draft.Preheat,
            Bath = draft.Bath,
            Start = draft.Start,
            Room = room,
            Notes = draft.Notes,
        });
    }

    private string? Iron(LoggedTool.Iron iron, Draft draft)
    {
        if (Find(iron.Profile, profiles.Irons, "iron", out Iron? profile) is { } fault)
        {
            return fault;
        }

        draft.Notes.Add($"The tip is taken to be {Word(contact)} on the joint; nobody measured its contact.");
        return Take(new IronSetting(profile!, iron.Set, profiles.Contacts[contact]).ToSource(), draft, source => draft.Tip = source);
    }

    private string? Air(LoggedTool.HotAir air, Draft draft)
    {
        if (Find(air.Profile, profiles.Nozzles, "nozzle", out AirNozzle? profile) is { } fault)
        {
            return fault;
        }

        Length distance = profile!.Diameter * NozzleDistances;
        draft.Notes.Add(string.Create(CultureInfo.InvariantCulture, $"The nozzle is taken to be held {distance.Millimeters:0} mm from the board."));
        return Take(new AirSetting(profile, air.Set, air.Flow, distance, room.Room).ToSource(), draft, source => draft.Jet = source);
    }

    private string? Preheat(LoggedTool.Preheater heater, Temperature? boardAtStart, bool heatsBoardOnly, Board board, Draft draft)
    {
        if (Find(heater.Profile, profiles.Preheaters, "preheater", out Preheater? profile) is { } fault)
        {
            return fault;
        }

        PreheatSetting setting = new(profile!, board, room);
        if (heatsBoardOnly)
        {
            return Take(setting.FromCold(heater.Set, draft.Start), draft, source => draft.Preheat = source);
        }

        if (boardAtStart is { } measured && setting.ToBoardTemperature(measured) is SettingOutcome<BottomHeat>.Ready held)
        {
            draft.Preheat = held.Source;
            draft.Notes.Add("The board is taken to be settled at its measured temperature over the preheater.");
            return null;
        }

        draft.Notes.Add("The board is taken to be settled over the preheater at its setting.");
        return Take(setting.Settled(heater.Set), draft, source => draft.Preheat = source);
    }

    private static string? Bath(LoggedTool.Bath bath, Draft draft)
    {
        draft.Bath = bath.Set;
        return null;
    }

    private static string? Find<T>(string? name, IReadOnlyDictionary<string, T> shelf, string what, out T? found)
        where T : class
    {
        found = name is null ? null : shelf.GetValueOrDefault(name);
        return found is not null ? null
            : name is null ? $"the {what}'s profile was not named"
            : $"there is no {what} '{name}'; known: {string.Join(", ", shelf.Keys.Order(StringComparer.Ordinal))}";
    }

    private static string? Take<T>(SettingOutcome<T> outcome, Draft draft, Action<T> use)
    {
        switch (outcome)
        {
            case SettingOutcome<T>.Ready ready:
                draft.Notes.AddRange(ready.Notes);
                use(ready.Source);
                return null;
            case SettingOutcome<T>.Refused refused:
                return refused.Reason;
            default:
                throw new InvalidOperationException("unknown kind of setting outcome");
        }
    }

    private static string Word(ContactState state) => state switch
    {
        ContactState.Bare => "bare",
        ContactState.Tinned => "tinned",
        _ => "flooded",
    };

    private sealed class Draft(Temperature start)
    {
        internal Temperature Start { get; } = start;

        internal TipSource? Tip { get; set; }

        internal JetSource? Jet { get; set; }

        internal BottomHeat? Preheat { get; set; }

        internal Temperature? Bath { get; set; }

        internal List<string> Notes { get; } = [];
    }
}
