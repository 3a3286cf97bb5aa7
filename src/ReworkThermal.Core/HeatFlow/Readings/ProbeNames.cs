using System.Globalization;

namespace ReworkThermal.Core.HeatFlow.Readings;

/// <summary>Names of the probes of a joint run.</summary>
public static class ProbeNames
{
    /// <summary>Working face of the tip that touches, or touched last.</summary>
    public const string Tip = "tip";

    /// <summary>Sensor of the tip that touches, or touched last.</summary>
    public const string TipSensor = "tip_sensor";

    /// <summary>Interface of pad and laminate on the side of the first touch.</summary>
    public const string NearPad = "near_pad_interface";

    /// <summary>Interface of pad and laminate on the other side.</summary>
    public const string FarPad = "far_pad_interface";

    /// <summary>The coldest solder of the joint, wherever it is.</summary>
    public const string ColdestSolder = "coldest_solder";

    /// <summary>Laminate 50 µm from the corner of pad and barrel on the side of the first touch.</summary>
    public const string KneeLaminate = "laminate_at_knee";

    /// <summary>Shell of the connector.</summary>
    public const string Connector = "connector";

    /// <summary>Top face of the board where neither joint nor part is near: half way to the rim.</summary>
    public const string Board = "board";

    /// <summary>Plane at a distance from the joint.</summary>
    /// <param name="millimetres">Distance from the centre of the joint [mm].</param>
    /// <returns>For example <c>plane_5mm</c>.</returns>
    public static string Plane(double millimetres) => string.Create(CultureInfo.InvariantCulture, $"plane_{millimetres:0.#}mm");

    /// <summary>Near edge of a neighbour.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>For example <c>neighbour_C12</c>.</returns>
    public static string Neighbour(string name) => "neighbour_" + name;

    /// <summary>Far edge of a neighbour.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>For example <c>neighbour_C12_far_edge</c>.</returns>
    public static string NeighbourFarEdge(string name) => "neighbour_" + name + "_far_edge";
}
