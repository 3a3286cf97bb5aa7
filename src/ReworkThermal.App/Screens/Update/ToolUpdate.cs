using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The tools in use, as read off them.</summary>
internal static class ToolUpdate
{
    /// <summary>The text field for a setting; the arrow keys step through the profiles at the setting's own temperature.</summary>
    internal static TextEntry Opened(BenchState state, ToolField field)
    {
        string text = Text(state.Clock, field);
        string number = string.Join(' ', text.Split(' ').Take(NumbersOf(field)));
        IReadOnlyList<string> names = Names(state, field);
        IReadOnlyList<string> options = number.Length > 0 ? [.. names.Select(n => $"{number} {n}")] : [];
        TextEntry entry = TextEntry.Of(new EntryFor.Tool(field), ScreenClockWords.ToolQuestion(field), text, options);
        return entry with { Hint = ScreenClockWords.ToolHint(field) };
    }

    /// <summary>The settings as the record keeps them, the tool in the hand first.</summary>
    internal static IReadOnlyList<ToolSetting> Tools(ClockState clock, PlanForm bench)
    {
        List<ToolSetting> tools = [];
        if (clock.IronCelsius is double iron)
        {
            tools.Add(new ToolSetting.Iron(clock.IronName, Temperature.FromDegreesCelsius(iron), FormReading.Contact(bench)));
        }

        if (clock is { AirCelsius: double air, AirLitresPerMinute: double flow })
        {
            tools.Add(new ToolSetting.HotAir(clock.NozzleName, Temperature.FromDegreesCelsius(air), VolumeFlow.FromLitersPerMinute(flow), FormReading.Distance(bench)));
        }

        if (clock.PreheatCelsius is double preheat)
        {
            tools.Add(new ToolSetting.Preheater(clock.PreheaterName, Temperature.FromDegreesCelsius(preheat)));
        }

        return tools;
    }

    /// <summary>The clock with one tool set as the record has it.</summary>
    internal static ClockState With(ClockState clock, ToolSetting tool) => tool switch
    {
        ToolSetting.Iron iron => clock with { IronCelsius = Math.Round(iron.Set.DegreesCelsius, 3), IronName = iron.Profile },
        ToolSetting.HotAir air => clock with
        {
            AirCelsius = Math.Round(air.Set.DegreesCelsius, 3),
            AirLitresPerMinute = Math.Round(air.Flow.LitersPerMinute, 3),
            NozzleName = air.Profile,
        },
        ToolSetting.Preheater preheater => clock with { PreheatCelsius = Math.Round(preheater.Set.DegreesCelsius, 3), PreheaterName = preheater.Profile },
        _ => clock,
    };

    /// <summary>A setting as text; empty when the tool is not used.</summary>
    internal static string Text(ClockState clock, ToolField field) => field switch
    {
        ToolField.Iron => clock.IronCelsius is double iron ? $"{Update.Typed.Text(iron)} {clock.IronName}".TrimEnd() : string.Empty,
        ToolField.Air => clock is { AirCelsius: double air, AirLitresPerMinute: double flow } ? $"{Update.Typed.Text(air)} {Update.Typed.Text(flow)} {clock.NozzleName}".TrimEnd() : string.Empty,
        ToolField.Preheat => clock.PreheatCelsius is double preheat ? $"{Update.Typed.Text(preheat)} {clock.PreheaterName}".TrimEnd() : string.Empty,
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    internal static Step Typed(BenchState state, TextEntry entry, ToolField field)
    {
        string[] words = entry.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        double first = 0;
        double second = 0;
        string? name = null;
        string? complaint = words.Length == 0 ? null : field switch
        {
            ToolField.Air => words.Length < 2
                ? ScreenClockWords.AirNeedsTwo(entry.Text)
                : Update.Typed.Number(words[0], AskLimits.LeastAirC, AskLimits.MostAirC, "°C", out first)
                    ?? Update.Typed.Number(words[1], AskLimits.LeastAirFlow, AskLimits.MostAirFlow, "L/min", out second)
                    ?? Named(state, field, words, out name),
            ToolField.Iron => Update.Typed.Number(words[0], AskLimits.LeastIronC, AskLimits.MostIronC, "°C", out first) ?? Named(state, field, words, out name),
            _ => Update.Typed.Number(words[0], 30, 300, "°C", out first) ?? Named(state, field, words, out name),
        };
        if (complaint is not null)
        {
            return EntryCommit.Wrong(state, entry, complaint);
        }

        double? celsius = words.Length > 0 ? first : null;
        ClockState clock = field switch
        {
            ToolField.Iron => state.Clock with { IronCelsius = celsius, IronName = name ?? state.Clock.IronName },
            ToolField.Air => state.Clock with
            {
                AirCelsius = celsius,
                AirLitresPerMinute = words.Length > 0 ? second : null,
                NozzleName = name ?? state.Clock.NozzleName,
            },
            _ => state.Clock with { PreheatCelsius = celsius, PreheaterName = name ?? state.Clock.PreheaterName },
        };
        return new Step(state with { Entry = null, Clock = clock });
    }

    private static int NumbersOf(ToolField field) => field == ToolField.Air ? 2 : 1;

    private static IReadOnlyList<string> Names(BenchState state, ToolField field) => field switch
    {
        ToolField.Iron => state.Shelf?.Irons,
        ToolField.Air => state.Shelf?.Nozzles,
        _ => state.Shelf?.Preheaters,
    } ?? [];

    /// <summary>The profile named behind the numbers; when none is, the one used last, else the first of the folder; it is shown.</summary>
    private static string? Named(BenchState state, ToolField field, string[] words, out string? name)
    {
        IReadOnlyList<string> known = Names(state, field);
        int numbers = NumbersOf(field);
        string? before = field switch
        {
            ToolField.Iron => state.Clock.IronName,
            ToolField.Air => state.Clock.NozzleName,
            _ => state.Clock.PreheaterName,
        };
        name = words.Length > numbers ? string.Join(' ', words[numbers..]) : before ?? (known.Count > 0 ? known[0] : null);
        return words.Length > numbers ? BriefText.Named(name!, known) : null;
    }
}
