using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Profiles;
using UnitsNet;
using LoggedTool = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.Data.Requests;

/// <summary>
/// The one way from words to tools: finds the profiles that a touch names and turns settings into boundary conditions, for the command
/// line, the record, the screens and the cases alike. What is not said is taken from <see cref="UsualTools"/>.
/// </summary>
/// <param name="profiles">All profiles.</param>
/// <param name="room">The air around the bench.</param>
public sealed class ToolShelf(ProfileLibrary profiles, Surroundings room) : IToolShelf
{
    /// <inheritdoc/>
    public ToolsOutcome Resolve(ToolUse use, JointSite site)
    {
        ArgumentNullException.ThrowIfNull(use);
        ArgumentNullException.ThrowIfNull(site);
        Draft draft = new(use.BoardAtStart ?? room.Room);
        bool heatsBoardOnly = use.Tools.All(t => t is LoggedTool.Preheater);
        foreach (LoggedTool tool in use.Tools)
        {
            string? fault = tool switch
            {
                LoggedTool.Iron iron => Iron(iron, draft),
                LoggedTool.HotAir air => Air(air, draft),
                LoggedTool.Preheater heater => Preheat(heater, use.BoardAtStart, heatsBoardOnly, site.Board, draft),
                LoggedTool.Bath bath => Bath(bath, draft),
                _ => throw new InvalidOperationException("unknown kind of tool"),
            };
            if (fault is not null)
            {
                return new ToolsOutcome.Refused(fault);
            }
        }

        bool onJoint = draft.Tip is not null || draft.Jet is not null;
        BoardSide side = (onJoint ? draft.Usual : new UsualTools()).SideOr(use.Side, site.Joint);
        if (use.BoardAtStart is null && draft.Preheat is null)
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
            Side = side,
            Use = use with { Tools = draft.Said, Side = onJoint ? side : use.Side },
            Assumed = draft.Usual.Assumed,
            Notes = [.. draft.Usual.Sentences, .. draft.Notes],
        });
    }

    /// <summary>A tip on the joint.</summary>
    internal SettingOutcome<TipSource> Tip(Iron iron, Temperature set, ContactState? contact, FluxState? flux, UsualTools usual) =>
        new IronSetting(iron, set, profiles.Contacts[usual.ContactOr(contact)] with { Flux = usual.FluxOr(flux) }).ToSource();

    /// <summary>A jet on the joint.</summary>
    internal SettingOutcome<JetSource> Jet(AirNozzle nozzle, Temperature set, VolumeFlow flow, Length? distance, UsualTools usual) =>
        new AirSetting(nozzle, set, flow, usual.DistanceOr(distance, nozzle), room.Room).ToSource();

    private string? Iron(LoggedTool.Iron iron, Draft draft)
    {
        if (Find(iron.Profile, profiles.Irons, "iron", out Iron? profile) is { } fault)
        {
            return fault;
        }

        draft.Said.Add(iron with { Contact = iron.Contact ?? UsualTools.Contact });
        if (iron.Contact is { } said)
        {
            draft.Notes.Add($"The tip is taken to be {said.Word()} on the joint; nobody measured its contact.");
        }

        return Take(Tip(profile!, iron.Set, iron.Contact, UsualTools.Flux, draft.Usual), draft, source => draft.Tip = source);
    }

    private string? Air(LoggedTool.HotAir air, Draft draft)
    {
        if (Find(air.Profile, profiles.Nozzles, "nozzle", out AirNozzle? profile) is { } fault)
        {
            return fault;
        }

        draft.Said.Add(air with { Distance = draft.Usual.DistanceOr(air.Distance, profile!) });
        return Take(Jet(profile!, air.Set, air.Flow, air.Distance, draft.Usual), draft, source => draft.Jet = source);
    }

    private string? Preheat(LoggedTool.Preheater heater, Temperature? boardAtStart, bool heatsBoardOnly, Board board, Draft draft)
    {
        if (Find(heater.Profile, profiles.Preheaters, "preheater", out Preheater? profile) is { } fault)
        {
            return fault;
        }

        draft.Said.Add(heater);
        PreheatSetting setting = new(profile!, board, room);
        if (heatsBoardOnly)
        {
            return Take(setting.FromCold(heater.Set, draft.Start), draft, source => draft.Preheat = source);
        }

        if (boardAtStart is { } measured && measured > room.Room)
        {
            draft.Notes.Add("The board is taken to be settled at its measured temperature over the preheater.");
            return Take(setting.ToBoardTemperature(measured), draft, source => draft.Preheat = source);
        }

        draft.Notes.Add("The board is taken to be settled over the preheater at its setting.");
        return Take(setting.Settled(heater.Set), draft, source => draft.Preheat = source);
    }

    private static string? Bath(LoggedTool.Bath bath, Draft draft)
    {
        draft.Said.Add(bath);
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

    private sealed class Draft(Temperature start)
    {
        internal Temperature Start { get; } = start;

        internal UsualTools Usual { get; } = new();

        internal List<LoggedTool> Said { get; } = [];

        internal TipSource? Tip { get; set; }

        internal JetSource? Jet { get; set; }

        internal BottomHeat? Preheat { get; set; }

        internal Temperature? Bath { get; set; }

        internal List<string> Notes { get; } = [];
    }
}
