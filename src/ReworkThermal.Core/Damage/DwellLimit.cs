namespace ReworkThermal.Core.Damage;

/// <summary>How much of a budget a touch may leave used.</summary>
/// <param name="Share">Greatest share of the budget after the touch, above zero; 1 is the whole of it.</param>
/// <param name="AtUnfavourableEnd">Whether the unfavourable end of the share must keep the limit, instead of the central one.</param>
public sealed record DwellLimit(double Share, bool AtUnfavourableEnd);
