using System.Globalization;
using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>Checks of single dimensions, with the field name for the message.</summary>
internal static class Dimension
{
    internal static Length Positive(Length value, string field) =>
        double.IsFinite(value.Meters) && value.Meters > 0
            ? value
            : throw new ImpossibleGeometryException(field, $"must be a finite length above 0 mm, got {Millimetres(value)}");

    internal static Length NotNegative(Length value, string field) =>
        double.IsFinite(value.Meters) && value.Meters >= 0
            ? value
            : throw new ImpossibleGeometryException(field, $"must be a finite length of 0 mm or more, got {Millimetres(value)}");

    internal static Estimate<Length> Positive([ValidatedNotNull] Estimate<Length> value, string field)
    {
        ArgumentNullException.ThrowIfNull(value);
        Positive(value.Low, field);
        Positive(value.Central, field);
        Positive(value.High, field);
        return value;
    }

    internal static Estimate<T> Above<T>([ValidatedNotNull] Estimate<T> value, T zero, string field)
        where T : struct, IComparable<T>
    {
        ArgumentNullException.ThrowIfNull(value);
        return value.Low.CompareTo(zero) > 0 && value.Central.CompareTo(zero) > 0 && value.High.CompareTo(zero) > 0
            ? value
            : throw new ImpossibleGeometryException(field, "must be above zero");
    }

    internal static Estimate<double> Between([ValidatedNotNull] Estimate<double> value, double least, double most, string field)
    {
        ArgumentNullException.ThrowIfNull(value);
        return value.Low >= least && value.High <= most
            ? value
            : throw new ImpossibleGeometryException(field, string.Create(CultureInfo.InvariantCulture, $"must lie between {least} and {most}"));
    }

    internal static string Millimetres(Length value) => string.Create(CultureInfo.InvariantCulture, $"{value.Millimeters:0.####} mm");

    /// <summary>Tells the analyzers that a method checks its argument for null.</summary>
    [AttributeUsage(AttributeTargets.Parameter)]
    private sealed class ValidatedNotNullAttribute : Attribute;
}
