using UnitsNet;

namespace ReworkThermal.Core.Jobs;

/// <summary>Solder put into a joint.</summary>
/// <param name="Designation">Alloy as written, for example <c>Sn42Bi58</c>.</param>
/// <param name="Mass">Metal added, or null when nobody measured it.</param>
public sealed record AddedSolder(string Designation, Mass? Mass);
