namespace ReworkThermal.Core.Phases.Solving;

/// <summary>The solvers for one set of elements, with their scratch memory. One instance belongs to one thread at a time.</summary>
internal sealed class EquilibriumKernel
{
    internal EquilibriumKernel(ReducedSystem system)
    {
        Surfaces = new GibbsSurfaces(system);
        Plane = new TangentPlane(Surfaces);
        Search = new CompositionSearch(Surfaces, Plane);
        Solver = new AssemblageSolver(Surfaces);
        Global = new GlobalSearch(Surfaces, Plane, Search, Solver);
    }

    internal ReducedSystem System => Surfaces.System;

    internal GibbsSurfaces Surfaces { get; }

    internal TangentPlane Plane { get; }

    internal CompositionSearch Search { get; }

    internal AssemblageSolver Solver { get; }

    internal GlobalSearch Global { get; }
}
