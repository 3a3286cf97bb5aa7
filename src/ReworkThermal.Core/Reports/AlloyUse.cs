using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>An alloy that was brought to a board, or arrived with it.</summary>
/// <param name="Designation">As it was written.</param>
/// <param name="Role">What it was for, one or two words.</param>
/// <param name="Touches">Number of touches that added it; zero for the solder on arrival.</param>
/// <param name="Added">Metal added, where it was logged; null when no mass was.</param>
/// <param name="LeadFraction">Lead by mass [kg/kg]; null when the designation cannot be read.</param>
public sealed record AlloyUse(string Designation, string Role, int Touches, Mass? Added, double? LeadFraction);
