using System.Globalization;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Lines of a plan request as the models take them; every line for itself is in order.</summary>
internal static class FormReading
{
    /// <summary>A line that holds a number, in the unit that its label names.</summary>
    internal static double Number(PlanForm form, PlanField field) => double.Parse(form[field], NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>Face of the board that tools work on; null for the usual one.</summary>
    internal static BoardSide? Side(PlanForm form) => Word<BoardSide>(form[PlanField.Side]);

    /// <summary>How the tip meets the joint; null for the usual way.</summary>
    internal static ContactState? Contact(PlanForm form) => Word<ContactState>(form[PlanField.Contact]);

    /// <summary>Distance of nozzle and board; null for the usual one.</summary>
    internal static Length? Distance(PlanForm form) => form[PlanField.AirMillimetres].Length == 0 ? null : Length.FromMillimeters(Number(form, PlanField.AirMillimetres));

    /// <summary>The kind of air that the request names, at its temperature.</summary>
    internal static Surroundings Room(Workshop workshop, PlanForm form) => workshop.Profiles.Rooms[form[PlanField.Room]] with
    {
        Room = Temperature.FromDegreesCelsius(Number(form, PlanField.AmbientCelsius)),
    };

    private static T? Word<T>(string text)
        where T : struct, Enum => Vocabulary.Of<T>().TryGetValue(text, out T member) ? member : null;
}
