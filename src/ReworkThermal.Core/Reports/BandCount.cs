namespace ReworkThermal.Core.Reports;

/// <summary>Pads in a band after the work.</summary>
/// <param name="Band">Name of the band.</param>
/// <param name="Central">Pads with central figures.</param>
/// <param name="AtWorst">Pads with every figure at its unfavourable end.</param>
public sealed record BandCount(string Band, int Central, int AtWorst);
