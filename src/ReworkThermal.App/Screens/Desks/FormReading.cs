using System.Globalization;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Boards;
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

    /// <summary>Face of the board that tools work on.</summary>
    internal static BoardSide Side(PlanForm form) => form[PlanField.Side] == "top" ? BoardSide.Top : BoardSide.Bottom;

    /// <summary>The kind of air that the request names, at its temperature.</summary>
    internal static Surroundings Room(Workshop workshop, PlanForm form) => workshop.Profiles.Rooms[form[PlanField.Room]] with
    {
        Room = Temperature.FromDegreesCelsius(Number(form, PlanField.AmbientCelsius)),
    };

    /// <summary>How the tip meets the joint.</summary>
    internal static TipContact Contact(Workshop workshop, PlanForm form) =>
        workshop.Profiles.Contacts[Enum.Parse<ContactState>(form[PlanField.Contact], ignoreCase: true)];
}
