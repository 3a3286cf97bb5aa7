namespace ReworkThermal.Core.Phases.Solving;

/// <summary>Where a path of cooling starts.</summary>
internal abstract record PathStart
{
    private PathStart()
    {
    }

    /// <summary>At the liquidus: the liquid, and the solid about to form in it.</summary>
    internal sealed record AtLiquidus(Assemblage Liquid, PhaseState Solid) : PathStart;

    /// <summary>At the highest temperature, because the liquid separates in two before it freezes.</summary>
    internal sealed record AtTop(Assemblage Liquid) : PathStart;

    /// <summary>Nowhere.</summary>
    /// <param name="Reason">One clause.</param>
    internal sealed record Failed(string Reason) : PathStart;
}
