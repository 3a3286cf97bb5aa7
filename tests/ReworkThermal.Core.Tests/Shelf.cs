using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Tests.Published;
using ReworkThermal.Data;
using ReworkThermal.Data.Alloys;

namespace ReworkThermal.Core.Tests;

/// <summary>The shipped alloys and phase data, read once per test run.</summary>
internal static class Shelf
{
    private static readonly Lazy<AlloyShelf> _alloys = new(() => AlloyShelf.Load(DataRoot.BesideProgram));
    public static AlloyShelf Alloys => _alloys.Value;

    public static PhaseEngine Engine => PhasesData.Engine;

    public static Alloy Dilution(string name) => Alloys.Dilutions.Single(a => a.Name == name);

    public static MassFractions Read(string designation) =>
        Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read(designation)).Fractions;
}
