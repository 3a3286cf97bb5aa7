using System.Globalization;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>The room of a plan request.</summary>
internal static class RoomOf
{
    /// <summary>The kind of air that the request names, at its temperature.</summary>
    internal static Surroundings The(Workshop workshop, PlanForm form) => workshop.Profiles.Rooms[form[PlanField.Room]] with
    {
        Room = Temperature.FromDegreesCelsius(double.Parse(form[PlanField.AmbientCelsius], CultureInfo.InvariantCulture)),
    };
}
