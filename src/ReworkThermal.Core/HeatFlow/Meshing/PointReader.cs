using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow.Meshing;

/// <summary>Temperature at any point of the meshed body.</summary>
internal readonly struct PointReader(ThermalSystem system)
{
    /// <summary>Temperature [K] at a point; points outside are moved to the edge.</summary>
    internal double At(double radiusM, double heightM)
    {
        MeshAxis radial = system.Grid.Radial;
        int i = radial.CellAt(radiusM);
        double centre = radial.Centres[i];
        double own = InColumn(i, heightM);
        if (radiusM >= centre)
        {
            bool atRim = i == radial.Count - 1;
            double face = radial.Faces[i + 1];
            double edge = atRim ? Surface(ThermalFace.Rim, heightM, own) : FaceBetween(i, heightM, own);
            return Between(own, edge, centre, face, radiusM);
        }

        if (i > 0)
        {
            return Between(InFaceBelow(i, heightM, own), own, radial.Faces[i], centre, radiusM);
        }

        if (radial.Faces[0] > 0)
        {
            return Between(Surface(ThermalFace.Bore, heightM, own), own, radial.Faces[0], centre, radiusM);
        }

        return radial.Count == 1 ? own : NearAxis(own, heightM, radiusM);
    }

    private static double Between(double inner, double outer, double from, double to, double radiusM) =>
        from > 0
            ? inner + ((outer - inner) * Math.Log(radiusM / from) / Math.Log(to / from))
            : inner + ((outer - inner) * (radiusM - from) / (to - from));

    // Even parabola through the two innermost centres.
    private double NearAxis(double own, double heightM, double radiusM)
    {
        double[] centres = system.Grid.Radial.Centres;
        double next = InColumn(1, heightM);
        double curvature = (next - own) / ((centres[1] * centres[1]) - (centres[0] * centres[0]));
        return own + (curvature * ((radiusM * radiusM) - (centres[0] * centres[0])));
    }

    private double InFaceBelow(int i, double heightM, double own)
    {
        double below = InColumn(i - 1, heightM);
        return FaceValue(i - 1, heightM, below, own);
    }

    private double FaceBetween(int i, double heightM, double own)
    {
        int j = RowIn(i + 1, heightM);
        return j < 0 ? own : FaceValue(i, heightM, own, InColumn(i + 1, heightM));
    }

    private double FaceValue(int i, double heightM, double inner, double outer)
    {
        MeshAxis radial = system.Grid.Radial;
        int j = system.Grid.Axial.CellAt(heightM);
        double ki = system.Grid.MaterialAt(i, j)?.RadialConductivity ?? 0;
        double ko = system.Grid.MaterialAt(i + 1, j)?.RadialConductivity ?? 0;
        double face = radial.Faces[i + 1];
        double gi = ki / Math.Log(face / radial.Centres[i]);
        double go = ko / Math.Log(radial.Centres[i + 1] / face);
        return gi + go > 0 ? ((gi * inner) + (go * outer)) / (gi + go) : inner;
    }

    private int RowIn(int i, double heightM)
    {
        int j = system.Grid.Axial.CellAt(heightM);
        return system.Grid.MaterialAt(i, j) is null ? -1 : j;
    }

    private double InColumn(int i, double heightM)
    {
        CellGrid grid = system.Grid;
        MeshAxis axial = grid.Axial;
        int top = grid.TopCell(i);
        int j = Math.Clamp(axial.CellAt(heightM), grid.BottomCell(i), top);
        double own = Cell(i, j);
        double centre = axial.Centres[j];
        double height = Math.Clamp(heightM, axial.Faces[j], axial.Faces[j + 1]);
        if (height >= centre)
        {
            double face = j == top ? Horizontal(ThermalFace.Top, i, own) : Face(i, j, own, Cell(i, j + 1));
            return own + ((face - own) * (height - centre) / (axial.Faces[j + 1] - centre));
        }

        double lower = j == grid.BottomCell(i) ? Horizontal(ThermalFace.Bottom, i, own) : FaceAbove(i, j - 1, Cell(i, j - 1), own);
        return own + ((lower - own) * (centre - height) / (centre - axial.Faces[j]));
    }

    // Seen from the lower cell: a contact resistance makes the two sides of a face differ.
    private double Face(int i, int j, double lower, double upper)
    {
        (double below, double contact, double above) = Series(i, j);
        return lower + ((upper - lower) * below / (below + contact + above));
    }

    private double FaceAbove(int i, int j, double lower, double upper)
    {
        (double below, double contact, double above) = Series(i, j);
        return upper + ((lower - upper) * above / (below + contact + above));
    }

    private (double Below, double Contact, double Above) Series(int i, int j)
    {
        CellGrid grid = system.Grid;
        double below = grid.Axial.Width(j) / 2 / grid.MaterialAt(i, j)!.AxialConductivity;
        double above = grid.Axial.Width(j + 1) / 2 / grid.MaterialAt(i, j + 1)!.AxialConductivity;
        return (below, 1 / grid.ContactOnTop[grid.Index(i, j)], above);
    }

    private double Cell(int i, int j) => system.CellTemperaturesK[system.Grid.Index(i, j)];

    private double Horizontal(ThermalFace face, int i, double otherwise) => Surface(face, system.Grid.Radial.Centres[i], otherwise);

    private double Surface(ThermalFace face, double at, double otherwise)
    {
        double kelvin = system.Surfaces.TemperatureAt(face, at);
        return double.IsNaN(kelvin) ? otherwise : kelvin;
    }
}
