using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Solving;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Profiles;
using ReworkThermal.Data.Requests;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>Reads a case of a joint on its board with tools.</summary>
internal static class JointCaseReader
{
    private static readonly Temperature _coldest = Temperature.FromDegreesCelsius(-40);

    private static readonly Temperature _hottest = Temperature.FromDegreesCelsius(200);

    private static readonly Temperature _mostSetting = Temperature.FromDegreesCelsius(1000);

    internal static HeatCase.AtJoint Read(FieldReader file, string title, SolverSettings settings, Workshop workshop)
    {
        List<string> notes = [];
        UsualTools usual = new();
        Board board = file.OneOf("board", workshop.Profiles.Boards);
        Surroundings room = file.OneOf("room", workshop.Profiles.Rooms);
        JointSite site = Site(file, board, workshop.Profiles);
        FieldReader? added = file.TableOrNull("added");
        return new HeatCase.AtJoint
        {
            Title = title,
            Settings = settings,
            Site = site,
            Solder = Solder(file, "solder", workshop.Alloys),
            Added = added is null ? null : Solder(added, "alloy", workshop.Alloys),
            AddedShare = added?.Quantity("share", UnitTable.Ratios, Ratio.Zero, Ratio.FromPercent(90)) ?? Ratio.Zero,
            Superheat = file.Quantity("superheat", UnitTable.TemperatureDeltas, TemperatureDelta.Zero, TemperatureDelta.FromKelvins(100)),
            Surroundings = room,
            Start = file.Quantity("start", UnitTable.Temperatures, _coldest, _hottest),
            Preheat = Preheat(file.TableOrNull("preheat"), board, room, workshop.Profiles, notes),
            Touches = Touches(file, site, room, workshop, usual, notes),
            End = file.Quantity("end", UnitTable.Durations, Duration.FromSeconds(0.01), Duration.FromHours(2)),
            Notes = [.. usual.Sentences, .. notes],
        };
    }

    private static JointSite Site(FieldReader file, Board board, ProfileLibrary profiles)
    {
        JointProfile joint = file.OneOf("joint", profiles.Joints);
        try
        {
            return joint.On(board);
        }
        catch (ImpossibleGeometryException misfit)
        {
            throw file.Wrong("joint", $"does not fit the board: {misfit.Message}");
        }
    }

    private static MassFractions Solder(FieldReader table, string field, AlloyShelf alloys) =>
        alloys.Find(table.Text(field)).OrThrow(reason => table.Wrong(field, reason));

    private static BottomHeat? Preheat(FieldReader? table, Board board, Surroundings room, ProfileLibrary profiles, List<string> notes)
    {
        if (table is null)
        {
            return null;
        }

        PreheatSetting preheater = new(table.OneOf("preheater", profiles.Preheaters), board, room);
        if (table.Has("board"))
        {
            return Ready(table, "board", preheater.ToBoardTemperature(table.Quantity("board", UnitTable.Temperatures, _coldest, _mostSetting)), notes);
        }

        Temperature set = table.Quantity("setting", UnitTable.Temperatures, _coldest, _mostSetting);
        return Ready(table, "setting", table.Truth("settled") ? preheater.Settled(set) : preheater.FromCold(set, room.Room), notes);
    }

    private static List<Touch> Touches(FieldReader file, JointSite site, Surroundings room, Workshop workshop, UsualTools usual, List<string> notes)
    {
        ProfileLibrary profiles = workshop.Profiles;
        ToolShelf shelf = new(profiles, room);
        List<Touch> touches = [];
        Duration free = Duration.Zero;
        foreach (FieldReader table in file.Tables("touch"))
        {
            Duration start = table.Quantity("start", UnitTable.Durations, Duration.Zero);
            if (start < free)
            {
                throw table.Wrong("start", "is before the end of the touch above; touches must follow one another");
            }

            Touch touch = new()
            {
                Start = start,
                Span = table.Quantity("span", UnitTable.Durations, Duration.FromMilliseconds(1), Duration.FromMinutes(10)),
                Side = usual.SideOr(table.OneOfOrNull<BoardSide>("side"), site.Joint),
                Braid = Braid(table, workshop),
                Tip = table.TableOrNull("iron") is { } iron ? Tip(iron) : null,
                Jet = table.TableOrNull("air") is { } air ? Jet(air) : null,
            };
            if (touch.Tip is null && touch.Jet is null)
            {
                throw table.Wrong("names no tool; give it an iron, air or both");
            }

            if (touch is { Tip: null, Braid: not null })
            {
                throw table.Wrong("braid", "lies between the tip of an iron and the joint; give the touch an iron");
            }

            if (touch is { Tip: not null, Side: BoardSide.Bottom } && site.Joint is SurfaceJoint)
            {
                throw table.Wrong("side", "puts an iron on the bottom, but the pad of a surface joint is on the top; write \"top\"");
            }

            free = touch.End;
            touches.Add(touch);
        }

        if (file.Has("end") && free > file.Quantity("end", UnitTable.Durations))
        {
            throw file.Wrong("end", "is before the end of the last touch");
        }

        return touches;

        TipSource Tip(FieldReader table) => Ready(
            table,
            "setting",
            shelf.Tip(
                table.Has("rated_power") ? Described(table) : table.OneOf("name", profiles.Irons),
                table.Quantity("setting", UnitTable.Temperatures, _coldest, _mostSetting),
                table.OneOfOrNull<ContactState>("contact"),
                table.OneOfOrNull<FluxState>("flux"),
                usual),
            notes);

        JetSource Jet(FieldReader table) => Ready(
            table,
            "setting",
            shelf.Jet(
                table.OneOf("nozzle", profiles.Nozzles),
                table.Quantity("setting", UnitTable.Temperatures, _coldest, _mostSetting),
                table.Quantity("flow", UnitTable.VolumeFlows, VolumeFlow.Zero),
                table.QuantityOrNull("distance", UnitTable.Lengths, Length.Zero, Length.FromMeters(1)),
                usual),
            notes);
    }

    private static Iron Described(FieldReader table)
    {
        Power rated = table.Quantity("rated_power", UnitTable.Powers, Power.FromWatts(1), Power.FromWatts(1000));
        Length width = table.Quantity("tip_width", UnitTable.Lengths, Length.FromMillimeters(0.1), Length.FromMillimeters(30));
        return IronClass.Of(
            string.Create(CultureInfo.InvariantCulture, $"{rated.Watts:0.#} W iron, {width.Millimeters:0.#} mm tip"),
            rated,
            width,
            table.Has("display_offset") ? table.Quantity("display_offset", UnitTable.TemperatureDeltas) : TemperatureDelta.Zero,
            _coldest,
            _mostSetting);
    }

    private static BraidLayer? Braid(FieldReader table, Workshop workshop)
    {
        if (!table.Has("braid"))
        {
            return null;
        }

        RemovalMethod method = table.OneOf("braid", workshop.Removals.ToDictionary(r => r.Name, StringComparer.Ordinal));
        return method.Strip is { } strip
            ? BraidHeat.LayerOf(strip)
            : throw table.Wrong("braid", $"names '{method.Name}', which is no braid between tip and joint; name one whose file has a table [strip]");
    }

    private static T Ready<T>(FieldReader table, string field, SettingOutcome<T> outcome, List<string> notes)
    {
        switch (outcome)
        {
            case SettingOutcome<T>.Ready ready:
                notes.AddRange(ready.Notes.Where(n => !notes.Contains(n, StringComparer.Ordinal)));
                return ready.Source;
            case SettingOutcome<T>.Refused refused:
                throw table.Wrong(field, refused.Reason);
            default:
                throw new InvalidOperationException("unknown kind of setting outcome");
        }
    }
}
