using System.Globalization;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Tests.Store;

/// <summary>Names jobs one after the other.</summary>
public sealed class FixedIds : IIdSource
{
    private int _last;

    public JobId NewJob() => new(string.Create(CultureInfo.InvariantCulture, $"job{++_last:D5}"));
}
