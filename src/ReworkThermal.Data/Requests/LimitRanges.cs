using UnitsNet;

namespace ReworkThermal.Data.Requests;

/// <summary>What a limit may sensibly be; anything outside is a typing error.</summary>
internal static class LimitRanges
{
    internal const int MostPasses = 12;
    internal static readonly Duration LeastDwell = Duration.FromSeconds(0.5);
    internal static readonly Duration MostDwell = Duration.FromSeconds(60);
    internal static readonly Duration MostAirTime = Duration.FromSeconds(300);
    internal static readonly Duration MostWorkingTime = Duration.FromSeconds(20);
    internal static readonly Temperature LeastIron = Temperature.FromDegreesCelsius(150);
    internal static readonly Temperature MostIron = Temperature.FromDegreesCelsius(480);
    internal static readonly TemperatureDelta LeastSuperheat = TemperatureDelta.FromKelvins(0);
    internal static readonly TemperatureDelta MostSuperheat = TemperatureDelta.FromKelvins(60);
    internal static readonly Temperature LeastPad = Temperature.FromDegreesCelsius(100);
    internal static readonly Temperature MostPad = Temperature.FromDegreesCelsius(360);
    internal static readonly Ratio LeastBudget = Ratio.FromPercent(0.01);
    internal static readonly Ratio MostBudget = Ratio.FromPercent(100);
    internal static readonly Ratio MostBudgetAfter = Ratio.FromPercent(500);
    internal static readonly TemperatureDelta MostPartRoom = TemperatureDelta.FromKelvins(100);
    internal static readonly Duration MostPartLag = Duration.FromSeconds(20);
    internal static readonly Temperature LeastPreheat = Temperature.FromDegreesCelsius(20);
    internal static readonly Temperature MostPreheat = Temperature.FromDegreesCelsius(180);
    internal static readonly Ratio MostAddedShare = Ratio.FromPercent(90);
    internal static readonly Temperature LeastAmbient = Temperature.FromDegreesCelsius(0);
    internal static readonly Temperature MostAmbient = Temperature.FromDegreesCelsius(50);
    internal static readonly VolumeFlow LeastAirFlow = VolumeFlow.FromLitersPerMinute(1);
    internal static readonly VolumeFlow MostAirFlow = VolumeFlow.FromLitersPerMinute(500);
    internal static readonly Length LeastAirDistance = Length.FromMillimeters(1);
    internal static readonly Length MostAirDistance = Length.FromMillimeters(200);
    internal static readonly Length LeastWire = Length.FromMillimeters(0.2);
    internal static readonly Length MostWire = Length.FromMillimeters(3);
}
