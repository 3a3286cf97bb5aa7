using System.Runtime.Serialization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Profiles;

/// <summary>Reads <c>profiles/boards</c>: an outline and a list of layers from top to bottom.</summary>
internal static class BoardProfiles
{
    private enum LayerKind
    {
        [EnumMember(Value = "plane")]
        Plane,
        [EnumMember(Value = "signal")]
        Signal,
        [EnumMember(Value = "dielectric")]
        Dielectric,
    }


    internal static Board Board(ProfileSource file, Func<string, string, Laminate> laminate, Func<string, string, Metal> metal)
    {
        file.Provenance();
        List<CopperLayer> copper = [];
        List<Length> dielectrics = [];
        bool lastWasCopper = false;
        foreach (ProfileSource layer in file.Tables("layer"))
        {
            LayerKind kind = layer.Fields.OneOf<LayerKind>("kind");
            bool isCopper = kind != LayerKind.Dielectric;
            if (isCopper == lastWasCopper)
            {
                throw layer.Fields.Wrong("kind", "copper and dielectric layers must take turns, starting with copper");
            }

            lastWasCopper = isCopper;
            if (!isCopper)
            {
                dielectrics.Add(layer.Fields.Quantity("thickness", UnitTable.Lengths, Length.Zero));
                continue;
            }

            copper.Add(layer.Build(() => new CopperLayer
            {
                Name = layer.Fields.Text("name"),
                Kind = kind == LayerKind.Plane ? CopperKind.Plane : CopperKind.Signal,
                Coverage = layer.Fields.Quantity("coverage", UnitTable.Ratios),
                Thickness = layer.Estimate("thickness", UnitTable.Lengths),
            }));
        }

        int declared = file.Fields.Whole("copper_layers", 1, 64);
        return declared == copper.Count
            ? Assemble(file, copper, dielectrics, laminate, metal)
            : throw file.Fields.Wrong("copper_layers", $"says {declared}, but {copper.Count} copper layer(s) are listed; correct one of them");
    }

    private static Board Assemble(
        ProfileSource file,
        List<CopperLayer> copper,
        List<Length> dielectrics,
        Func<string, string, Laminate> laminate,
        Func<string, string, Metal> metal) => file.Build(() => new Board
        {
            Name = file.Fields.Text("name"),
            Width = file.Fields.Quantity("width", UnitTable.Lengths),
            Depth = file.Fields.Quantity("depth", UnitTable.Lengths),
            StackUp = new StackUp(copper, dielectrics, file.Fields.Quantity("thickness", UnitTable.Lengths)),
            Laminate = laminate(file.Fields.Text("laminate"), "laminate"),
            Copper = metal(file.Fields.Text("copper_metal"), "copper_metal"),
        });
}
