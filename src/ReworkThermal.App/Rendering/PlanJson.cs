using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Rendering;

/// <summary>One plan as JSON.</summary>
internal static class PlanJson
{
    /// <summary>Writes the members of a plan; the settings and times at the top are those of the first pass.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="plan">The plan.</param>
    internal static void WriteMembers(Utf8JsonWriter json, PlanLine plan)
    {
        json.Text("kind", plan.Kind);
        json.Text("alloy", plan.Alloy);
        json.Number("ratio", plan.Share, 5);
        json.Number("added_mass_mg", plan.AddedMass.Milligrams, 2);
        json.Number("wire_length_mm", plan.WireLength?.Millimeters, 2);
        json.Number("flow_c", plan.Flow.DegreesCelsius, 2);
        json.Number("uncertainty_k", plan.Uncertainty.Kelvins, 2);
        json.Number("iron_set_c", plan.First.IronSetting?.DegreesCelsius, 0);
        json.Number("preheat_c", plan.First.Preheater is null ? null : plan.First.Board.DegreesCelsius, 1);
        json.Number("air_set_c", plan.First.Air?.Setting.DegreesCelsius, 0);
        json.Number("air_flow_lpm", plan.First.Air?.Flow.LitersPerMinute, 1);
        json.Number("air_lead_s", plan.First.Air?.Lead.Seconds, 1);
        json.Number("dwell_s", plan.First.Dwell.Seconds, 2);
        json.Number("stop_s", plan.First.Stop.Seconds, 2);
        json.WriteNumber("passes", plan.Passes);
        json.Number("budget_share", plan.BudgetShare.Central, 6);
        json.Text("binding_limit", plan.BindingLimit);
        json.Number("time_to_flow_s", plan.First.TimeToFlow.Seconds, 3);
        json.Number("time_to_flow_p10_s", plan.TimeToFlowSpread?.P10?.Seconds, 3);
        json.Number("time_to_flow_p50_s", plan.TimeToFlowSpread?.P50?.Seconds, 3);
        json.Number("time_to_flow_p90_s", plan.TimeToFlowSpread?.P90?.Seconds, 3);
        WriteSampling(json, plan.TimeToFlowSpread);
        WriteTouch(json, "first_pass", plan.First);
        WriteTouch(json, "refit", plan.Refit);
        WriteFinal(json, plan.Final);
        json.Spread("budget_share_range", plan.BudgetShare);
        json.Spread("budget_share_now", plan.BudgetNow);
        json.Spread("budget_share_after", plan.BudgetAfter);
        json.Spread("laminate_share_range", plan.LaminateShare);
        WriteGauges(json, plan.Gauges);
        json.Text("budget_reason", plan.BudgetReason);
        WriteNeighbours(json, plan.Neighbours);
        json.Sentences("cautions", plan.Cautions);
    }

    private static void WriteSampling(Utf8JsonWriter json, TimeSpread? spread)
    {
        if (spread is null)
        {
            json.WriteNull("sampling");
            return;
        }

        json.WriteStartObject("sampling");
        json.WriteNumber("benches", spread.Samples);
        json.Number("followed_s", spread.Followed.Seconds, 2);
        json.WriteNumber("finished_before_stop", spread.FinishedInTime);
        json.WriteNumber("pad_over_limit", spread.PadTooHot);
        json.Number("explained_share", spread.Explained, 4);
        json.WriteStartArray("influences");
        foreach (InfluenceLine influence in spread.Influences)
        {
            json.WriteStartObject();
            json.Text("input", influence.Input);
            json.Number("share", influence.Share, 4);
            json.Text("source", influence.Source);
            json.Text("how_to_learn", influence.HowToLearn);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteTouch(Utf8JsonWriter json, string name, TouchLine touch)
    {
        json.WriteStartObject(name);
        json.Text("iron", touch.Iron);
        json.Number("iron_set_c", touch.IronSetting?.DegreesCelsius, 0);
        json.Text("nozzle", touch.Air?.Nozzle);
        json.Number("air_set_c", touch.Air?.Setting.DegreesCelsius, 0);
        json.Number("air_flow_lpm", touch.Air?.Flow.LitersPerMinute, 1);
        json.Number("air_lead_s", touch.Air?.Lead.Seconds, 1);
        json.Number("air_distance_mm", touch.Air?.Distance.Millimeters, 1);
        json.Text("preheater", touch.Preheater);
        json.Number("board_c", touch.Board.DegreesCelsius, 1);
        json.Number("time_to_flow_s", touch.TimeToFlow.Seconds, 3);
        json.Number("dwell_s", touch.Dwell.Seconds, 2);
        json.Number("stop_s", touch.Stop.Seconds, 2);
        json.Text("stop_reason", touch.StopReason);
        json.Number("pad_peak_c", touch.PadPeak.DegreesCelsius, 1);
        json.WriteEndObject();
    }

    private static void WriteFinal(Utf8JsonWriter json, FinalJointLine final)
    {
        json.WriteStartObject("final_joint");
        MeltView.WriteFractions(json, "mass_fractions", final.Composition);
        json.Number("solidus_c", final.Solidus.DegreesCelsius, 2);
        json.Number("scheil_end_c", final.ScheilEnd.DegreesCelsius, 2);
        json.Number("liquid_fraction_at_100c", final.LiquidFractionAt100C, 6);
        json.Number("liquid_fraction_at_140c", final.LiquidFractionAt140C, 6);
        json.WriteBoolean("clean", final.IsClean);
        json.WriteEndObject();
    }

    private static void WriteGauges(Utf8JsonWriter json, IReadOnlyList<GaugeLine> gauges)
    {
        json.WriteStartArray("gauges");
        foreach (GaugeLine gauge in gauges)
        {
            json.WriteStartObject();
            json.Text("name", gauge.Name);
            json.Spread("before", gauge.Before);
            json.Spread("after", gauge.After);
            json.Text("support", gauge.Support);
            json.Text("reason", gauge.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteNeighbours(Utf8JsonWriter json, IReadOnlyList<NeighbourStrain> strains)
    {
        json.WriteStartArray("neighbours");
        foreach (NeighbourStrain strain in strains)
        {
            json.WriteStartObject();
            json.Text("name", strain.Part);
            json.Text("limit_of", PlanWords.NameOf(strain.Kind));
            json.Number("worst", strain.Worst, 2);
            json.Number("doubtful_from", strain.Doubtful, 2);
            json.Number("limit", strain.Most, 2);
            json.Text("unit", strain.Unit);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
