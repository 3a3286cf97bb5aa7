using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The tools in use, as read off them.</summary>
internal static class ToolUpdate
{
    /// <summary>Asks for a setting.</summary>
    internal static Step Ask(BenchState state, ToolField field) => new(state with
    {
        Entry = TextEntry.Of(new EntryFor.Tool(field), ScreenClockWords.ToolQuestion(field), Text(state.Clock, field)),
    });

    /// <summary>The settings as the record keeps them, the tool in the hand first.</summary>
    internal static IReadOnlyList<ToolSetting> Tools(ClockState clock)
    {
        List<ToolSetting> tools = [];
        if (clock.IronCelsius is double iron)
        {
            tools.Add(new ToolSetting.Iron(null, Temperature.FromDegreesCelsius(iron)));
        }

        if (clock is { AirCelsius: double air, AirLitresPerMinute: double flow })
        {
            tools.Add(new ToolSetting.HotAir(null, Temperature.FromDegreesCelsius(air), VolumeFlow.FromLitersPerMinute(flow)));
        }

        if (clock.PreheatCelsius is double preheat)
        {
            tools.Add(new ToolSetting.Preheater(null, Temperature.FromDegreesCelsius(preheat)));
        }

        return tools;
    }

    /// <summary>The clock with one tool set as the record has it.</summary>
    internal static ClockState With(ClockState clock, ToolSetting tool) => tool switch
    {
        ToolSetting.Iron iron => clock with { IronCelsius = Math.Round(iron.Set.DegreesCelsius, 3) },
        ToolSetting.HotAir air => clock with
        {
            AirCelsius = Math.Round(air.Set.DegreesCelsius, 3),
            AirLitresPerMinute = Math.Round(air.Flow.LitersPerMinute, 3),
        },
        ToolSetting.Preheater preheater => clock with { PreheatCelsius = Math.Round(preheater.Set.DegreesCelsius, 3) },
        _ => clock,
    };

    /// <summary>A setting as text; empty when the tool is not used.</summary>
    internal static string Text(ClockState clock, ToolField field) => field switch
    {
        ToolField.Iron => clock.IronCelsius is double iron ? Update.Typed.Text(iron) : string.Empty,
        ToolField.Air => clock is { AirCelsius: double air, AirLitresPerMinute: double flow } ? $"{Update.Typed.Text(air)} {Update.Typed.Text(flow)}" : string.Empty,
        ToolField.Preheat => clock.PreheatCelsius is double preheat ? Update.Typed.Text(preheat) : string.Empty,
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    internal static Step Typed(BenchState state, TextEntry entry, ToolField field)
    {
        string text = entry.Text.Trim();
        double first = 0;
        double second = 0;
        string? complaint = null;
        if (text.Length > 0 && field == ToolField.Air)
        {
            string[] parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            complaint = parts.Length != 2
                ? ScreenClockWords.AirNeedsTwo(text)
                : Update.Typed.Number(parts[0], 50, 600, "°C", out first) ?? Update.Typed.Number(parts[1], 0.1, 500, "L/min", out second);
        }
        else if (text.Length > 0)
        {
            complaint = Update.Typed.Number(text, field == ToolField.Iron ? 100 : 30, field == ToolField.Iron ? 550 : 450, "°C", out first);
        }

        if (complaint is not null)
        {
            return EntryCommit.Wrong(state, entry, complaint);
        }

        double? celsius = text.Length > 0 ? first : null;
        ClockState clock = field switch
        {
            ToolField.Iron => state.Clock with { IronCelsius = celsius },
            ToolField.Air => state.Clock with { AirCelsius = celsius, AirLitresPerMinute = text.Length > 0 ? second : null },
            _ => state.Clock with { PreheatCelsius = celsius },
        };
        return new Step(state with { Entry = null, Clock = clock });
    }
}
