using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Profiles;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>Reads a case of kind <c>joint</c>.</summary>
internal static class JointCase
{
    private static readonly Dictionary<string, BoardSide> _sides = new(StringComparer.Ordinal) { ["top"] = BoardSide.Top, ["bottom"] = BoardSide.Bottom };

    private static readonly Dictionary<string, ContactState> _contacts = new(StringComparer.Ordinal)
    {
        ["bare"] = ContactState.Bare,
        ["tinned"] = ContactState.Tinned,
        ["flooded"] = ContactState.Flooded,
    };

    internal static HeatCase Read(FieldReader file, ProfileLibrary library, SolverSettings settings)
    {
        Board board = Pick(file, "board", library.Boards);
        JointProfile profile = Pick(file, "joint", library.Joints);
        Surroundings room = Pick(file, "room", library.Rooms);
        if (file.Has("room_temperature"))
        {
            room = room with { Room = file.Quantity("room_temperature", UnitTable.Temperatures, Temperature.FromDegreesCelsius(-20), Temperature.FromDegreesCelsius(60)) };
        }

        JointSite site;
        try
        {
            site = profile.On(board);
        }
        catch (ImpossibleGeometryException impossible)
        {
            throw file.Wrong("joint", $"does not fit the board: {impossible.Message}");
        }

        Temperature start = file.Has("start") ? file.Quantity("start", UnitTable.Temperatures, Temperature.FromDegreesCelsius(-40), Temperature.FromDegreesCelsius(200)) : room.Room;
        List<string> assumptions = file.Has("start") ? [] : ["Everything starts at room temperature."];
        BottomHeat? preheat = file.TableOrNull("preheat") is { } heat ? Preheat(heat, board, room, start, library) : null;
        IReadOnlyList<FieldReader> tables = file.Tables("touch");
        List<Touch> touches = [.. tables.Select(t => Touch(t, room, library, assumptions))];
        Duration end = file.Quantity("end", UnitTable.Durations);
        TemperatureDelta superheat = file.Quantity("superheat", UnitTable.TemperatureDeltas, TemperatureDelta.Zero, TemperatureDelta.FromKelvins(200));
        JointProblem Pose(EnthalpyCurve curve, Temperature flow) => new()
        {
            Site = site,
            Solder = curve,
            FlowTemperature = flow,
            Superheat = superheat,
            Surroundings = room,
            Start = start,
            Preheat = preheat,
            Touches = touches,
            End = end,
        };
        CheckTimes(file, tables, touches, end);
        return new HeatCase.OnBoard(SolderTable.Read(file.Table("solder")), Pose, assumptions) { Settings = settings };
    }

    private static void CheckTimes(FieldReader file, IReadOnlyList<FieldReader> tables, List<Touch> touches, Duration end)
    {
        if (end <= Duration.Zero)
        {
            throw file.Wrong("end", "must be above 0 s");
        }

        Duration free = Duration.Zero;
        for (int i = 0; i < touches.Count; i++)
        {
            if (touches[i].Start.Seconds < free.Seconds - 1e-9)
            {
                throw tables[i].Wrong("start", "lies before the end of the touch before it; touches must follow one another");
            }

            free = touches[i].End;
            if (free.Seconds > end.Seconds + 1e-9)
            {
                throw tables[i].Wrong("span", "goes past the end of the run; make end later or the touch shorter");
            }
        }
    }

    private static BottomHeat Preheat(FieldReader table, Board board, Surroundings room, Temperature start, ProfileLibrary library)
    {
        PreheatSetting setting = new(Pick(table, "heater", library.Preheaters), board, room);
        if (table.Has("board"))
        {
            return Accept(table, "board", setting.ToBoardTemperature(table.Quantity("board", UnitTable.Temperatures)));
        }

        Temperature set = table.Quantity("set", UnitTable.Temperatures);
        return Accept(table, "set", table.Truth("settled") ? setting.Settled(set) : setting.FromCold(set, start));
    }

    private static Touch Touch(FieldReader table, Surroundings room, ProfileLibrary library, List<string> assumptions)
    {
        Duration start = table.Quantity("start", UnitTable.Durations, Duration.Zero);
        Duration span = table.Quantity("span", UnitTable.Durations);
        if (span <= Duration.Zero)
        {
            throw table.Wrong("span", "must be above 0 s");
        }

        if (!table.Has("iron") && !table.Has("nozzle"))
        {
            throw table.Wrong("names no tool; give it iron with iron_set and contact, or nozzle with air_set, air_flow and air_distance");
        }

        return new Touch
        {
            Start = start,
            Span = span,
            Side = table.OneOf("side", _sides),
            Tip = table.Has("iron") ? Tip(table, library) : null,
            Jet = table.Has("nozzle") ? Jet(table, room, library, assumptions) : null,
        };
    }

    private static TipSource Tip(FieldReader table, ProfileLibrary library)
    {
        Iron iron = Pick(table, "iron", library.Irons);
        Temperature set = table.Quantity("iron_set", UnitTable.Temperatures);
        TipContact contact = library.Contacts[table.OneOf("contact", _contacts)];
        return Accept(table, "iron_set", new IronSetting(iron, set, contact).ToSource());
    }

    private static JetSource Jet(FieldReader table, Surroundings room, ProfileLibrary library, List<string> assumptions)
    {
        AirSetting setting = new(
            Pick(table, "nozzle", library.Nozzles),
            table.Quantity("air_set", UnitTable.Temperatures),
            table.Quantity("air_flow", UnitTable.VolumeFlows),
            table.Quantity("air_distance", UnitTable.Lengths),
            room.Room);
        SettingOutcome<JetSource> outcome = setting.ToSource();
        if (outcome is SettingOutcome<JetSource>.Ready ready)
        {
            assumptions.AddRange(ready.Notes.Where(n => !assumptions.Contains(n)));
        }

        return Accept(table, "nozzle", outcome);
    }

    private static T Accept<T>(FieldReader table, string field, SettingOutcome<T> outcome) => outcome switch
    {
        SettingOutcome<T>.Ready ready => ready.Source,
        SettingOutcome<T>.Refused refused => throw table.Wrong(field, refused.Reason),
        _ => throw new InvalidOperationException("unknown outcome"),
    };

    private static T Pick<T>(FieldReader table, string field, IReadOnlyDictionary<string, T> known)
    {
        string id = table.Text(field);
        return known.TryGetValue(id, out T? found)
            ? found
            : throw table.Wrong(field, $"names '{id}', which is not a profile; known: {string.Join(", ", known.Keys.Order(StringComparer.Ordinal))}");
    }
}
