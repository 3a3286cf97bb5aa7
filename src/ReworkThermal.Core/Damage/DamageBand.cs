namespace ReworkThermal.Core.Damage;

/// <summary>How a pad stands, from what it has had. The borders are judgement.</summary>
public enum DamageBand
{
    /// <summary>Little used.</summary>
    Low,

    /// <summary>Noticeably used: plan the remaining touches.</summary>
    Raised,

    /// <summary>Nearly used up: only what is necessary.</summary>
    High,

    /// <summary>Used up: heat this pad no further.</summary>
    Stop,
}
