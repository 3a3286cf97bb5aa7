namespace ReworkThermal.Core.HeatFlow;

/// <summary>When the solder of the whole joint, barrel and fillets, was hot enough to flow.</summary>
/// <param name="FlowCelsius">Flow temperature [°C].</param>
/// <param name="SuperheatK">Superheat asked for above it [K].</param>
/// <param name="SecondsToFlow">Time from the start of the touch until the coldest solder had flow temperature and superheat [s]; null if never.</param>
/// <param name="ColdestPeakCelsius">Highest temperature the coldest solder reached [°C].</param>
public sealed record FlowReport(double FlowCelsius, double SuperheatK, double? SecondsToFlow, double ColdestPeakCelsius);
