using System.Text.Json;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Evidence;

namespace ReworkThermal.App.Rendering;

/// <summary>Parts of the damage model as JSON.</summary>
internal static class DamageJson
{
    /// <summary>A figure at its favourable end, centre and unfavourable end.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="name">Field name with its unit.</param>
    /// <param name="spread">The figure.</param>
    internal static void Spread(this Utf8JsonWriter json, string name, Spread spread)
    {
        json.WriteStartObject(name);
        json.Number("low", Bounded(spread.Low), 6);
        json.Number("central", Bounded(spread.Central), 6);
        json.Number("high", Bounded(spread.High), 6);
        json.WriteEndObject();
    }

    /// <summary>The gauges of a budget.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="budget">The budget.</param>
    internal static void WriteGauges(Utf8JsonWriter json, HeatBudget budget)
    {
        json.WriteStartArray("gauges");
        foreach (Gauge gauge in budget.Gauges)
        {
            json.WriteStartObject();
            json.Text("gauge", gauge.Kind.Word());
            json.Spread("share", gauge.Share);
            json.Spread("value", gauge.Value);
            json.Text("unit", gauge.Unit);
            json.Text("band", gauge.Band.Word());
            json.Text("worst_band", gauge.WorstBand.Word());
            json.Text("support", gauge.Support.Word());
            json.Text("reason", gauge.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A pull check.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="name">Field name.</param>
    /// <param name="pull">The check.</param>
    internal static void WritePull(Utf8JsonWriter json, string name, PullCheck pull)
    {
        json.WriteStartObject(name);
        json.WriteBoolean("do_not_pull", pull.Verdict is PullVerdict.DoNotPull);
        json.Text("verdict", Wording.BudgetWords.Verdict(pull.Verdict));
        json.Sentences("joints_below_flow", pull.Verdict is PullVerdict.DoNotPull no ? no.Joints : []);
        json.Spread("capacity_n", pull.CapacityN);
        json.Spread("bond_n", pull.BondN);
        json.Spread("barrel_n", pull.BarrelN);
        json.WriteStartArray("margins");
        foreach (PullMargin margin in pull.Margins)
        {
            json.WriteStartObject();
            json.Text("demand", margin.Demand.Word());
            json.Number("force_n", margin.Force.Central.Newtons, 4);
            json.Spread("margin", margin.Margin);
            json.Text("outcome", margin.Outcome.Word());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("pressed_edge");
        json.Number("force_n", pull.PressedEdge.Force.Central.Newtons, 4);
        json.Number("lifting_share", pull.PressedEdge.LiftingShare, 4);
        json.Spread("margin", pull.PressedEdge.Margin);
        json.Text("outcome", pull.PressedEdge.Outcome.Word());
        json.WriteEndObject();
        json.Text("support", pull.Support.Word());
        json.WriteEndObject();
    }

    // A scorched laminate can sum up to more than a decimal number holds; a share of a thousand says as much.
    private static double Bounded(double value) => Math.Clamp(value, -1e9, 1e9);
}
