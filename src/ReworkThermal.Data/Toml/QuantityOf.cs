namespace ReworkThermal.Data.Toml;

/// <summary>One kind of quantity, typed.</summary>
/// <typeparam name="TQuantity">UnitsNet quantity.</typeparam>
/// <typeparam name="TUnit">Its unit enumeration.</typeparam>
/// <param name="words">Words for error messages, for example "a length".</param>
/// <param name="from">Builds the quantity from a number and a unit.</param>
/// <param name="units">Unit texts allowed in files.</param>
internal sealed class Quantity<TQuantity, TUnit>(string words, Func<double, TUnit, TQuantity> from, Dictionary<string, TUnit> units) : Quantity
    where TQuantity : struct
    where TUnit : struct, Enum
{
    /// <inheritdoc/>
    internal override string Words => words;

    /// <inheritdoc/>
    internal override string UnitWords => string.Join(", ", units.Keys);

    /// <summary>Largest number before a unit; some quantities count in decimal numbers, which end near 1e28.</summary>
    private const double Largest = 1e20;

    /// <summary>Reads text such as "1.6 mm".</summary>
    /// <param name="text">Number, space, unit.</param>
    /// <param name="quantity">The quantity.</param>
    /// <returns>Whether the text is a number of a size that can mean something, with an allowed unit.</returns>
    internal bool TryParse(string text, out TQuantity quantity)
    {
        if (TrySplit(text, out double number, out string unit) && Math.Abs(number) <= Largest && units.TryGetValue(unit, out TUnit known))
        {
            quantity = from(number, known);
            return true;
        }

        quantity = default;
        return false;
    }
}
