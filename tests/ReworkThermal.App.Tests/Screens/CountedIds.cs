using System.Globalization;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>Job identities in order.</summary>
internal sealed class CountedIds : IIdSource
{
    private int _last;

    public JobId NewJob() => new(string.Create(CultureInfo.InvariantCulture, $"job{++_last:000}"));
}
