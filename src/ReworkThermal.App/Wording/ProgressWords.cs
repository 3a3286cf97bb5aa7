using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Words shown while something takes long.</summary>
internal static class ProgressWords
{
    internal static string Line(int percent, string doing) => string.Create(CultureInfo.InvariantCulture, $"{percent,3} % {doing}");
}
