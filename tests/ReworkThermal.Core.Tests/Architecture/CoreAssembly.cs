using ArchUnitNET.Domain;
using ArchUnitNET.Domain.Dependencies;
using ArchUnitNET.Loader;
using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Tests.Architecture;

/// <summary>The compiled model, read once: who uses what, method bodies included.</summary>
internal static class CoreAssembly
{
    internal const string Root = "ReworkThermal.Core";

    private static readonly Lazy<ArchUnitNET.Domain.Architecture> _loaded = new(() => new ArchLoader().LoadAssemblies(typeof(Element).Assembly).Build());

    /// <summary>Types of the model, compiler-made ones included.</summary>
    internal static IEnumerable<IType> Types => _loaded.Value.Types.Where(t => t.FullName.StartsWith(Root + ".", StringComparison.Ordinal));

    /// <summary>Every use of one type or member by another.</summary>
    internal static IEnumerable<ITypeDependency> Uses => Types.SelectMany(t => t.Dependencies);

    /// <summary>First folder below the root that a type lives in; empty for a type outside the model or outside every room.</summary>
    internal static string RoomOf(IType type) => RoomOf(type.FullName);

    /// <summary>First folder below the root that a full name lies in.</summary>
    internal static string RoomOf(string fullName)
    {
        string[] parts = fullName.Split('.');
        return fullName.StartsWith(Root + ".", StringComparison.Ordinal) && parts.Length > 3 ? parts[2] : string.Empty;
    }
}
