using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Meshing;
using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Posing;

/// <summary>
/// A heat-flow problem posed by hand: blocks of explicit materials in an axisymmetric body, explicit conditions on its faces, explicit
/// start. No board, no joint: a way to hold the solver against an exact solution. A slab or a bar is a body of one ring.
/// </summary>
public sealed record PosedProblem
{
    /// <summary>Radius at which the body begins: zero for a full cylinder, above zero for a bore.</summary>
    public required Length InnerRadius { get; init; }

    /// <summary>Radius at which the body ends.</summary>
    public required Length OuterRadius { get; init; }

    /// <summary>Height of the body; it begins at z = 0.</summary>
    public required Length Height { get; init; }

    /// <summary>Materials by place; a later block overrides an earlier one. Together they must fill the body.</summary>
    public required IReadOnlyList<PosedBlock> Blocks { get; init; }

    /// <summary>Contact planes between blocks.</summary>
    public IReadOnlyList<PosedContact> Contacts { get; init; } = [];

    /// <summary>What happens at the faces, one stage after the other.</summary>
    public required IReadOnlyList<PosedStage> Stages { get; init; }

    /// <summary>Points to watch.</summary>
    public required IReadOnlyList<PosedProbe> Probes { get; init; }

    /// <summary>Cells along r; null lets the program choose.</summary>
    public IReadOnlyList<Division>? RadialDivisions { get; init; }

    /// <summary>Cells along z; null lets the program choose.</summary>
    public IReadOnlyList<Division>? AxialDivisions { get; init; }

    /// <summary>Whether only the state that does not change any more is asked for (of the first stage).</summary>
    public bool Steady { get; init; }
}

/// <summary>A stretch of time with the same conditions at the faces.</summary>
/// <param name="Span">Its length, above zero.</param>
/// <param name="Patches">Conditions; faces without one are insulated.</param>
public sealed record PosedStage(Duration Span, IReadOnlyList<FacePatch> Patches);

/// <summary>A ring of one material.</summary>
/// <param name="Inner">Inner radius.</param>
/// <param name="Outer">Outer radius.</param>
/// <param name="Bottom">Lower end.</param>
/// <param name="Top">Upper end.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Start">Temperature at the start.</param>
public sealed record PosedBlock(Length Inner, Length Outer, Length Bottom, Length Top, PosedMaterial Material, Temperature Start);

/// <summary>A horizontal plane with a contact conductance.</summary>
/// <param name="Height">Height of the plane; must be a cell face.</param>
/// <param name="Conductance">Conductance per area, above zero.</param>
public sealed record PosedContact(Length Height, HeatTransferCoefficient Conductance);

/// <summary>A point to watch.</summary>
/// <param name="Name">Name of the history.</param>
/// <param name="Radius">Radius.</param>
/// <param name="Height">Height.</param>
public sealed record PosedProbe(string Name, Length Radius, Length Height);
