using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>A solder as a case file names it.</summary>
public abstract record SolderChoice
{
    private SolderChoice()
    {
    }

    /// <summary>Explicit melting points and heats.</summary>
    /// <param name="Curve">Heat content.</param>
    /// <param name="Flow">Flow temperature.</param>
    public sealed record Given(EnthalpyCurve Curve, Temperature Flow) : SolderChoice;

    /// <summary>A designation that the caller turns into a melt curve.</summary>
    /// <param name="Text">For example <c>Sn96.5Ag3Cu0.5</c>.</param>
    /// <param name="Place">File and line, for a complaint about it.</param>
    public sealed record Designation(string Text, DataFileProblem Place) : SolderChoice;
}
