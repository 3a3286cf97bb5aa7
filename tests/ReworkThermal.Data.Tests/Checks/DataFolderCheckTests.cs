using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Data.Checks;

namespace ReworkThermal.Data.Tests.Checks;

public sealed class DataFolderCheckTests
{
    [Theory]
    [InlineData("alloys/solders/sn63pb37.toml", "composition = ", "compositions = ")]
    [InlineData("alloys/elements.toml", "[Ag]", "[Au]")]
    [InlineData("alloys/wire.toml", "flux_share", "flux_part")]
    [InlineData("alloys/thermodynamics/pb-sn.toml", "status = ", "state = ")]
    [InlineData("profiles/air/round-4.toml", "diameter = ", "diametre = ")]
    [InlineData("profiles/boards/two-layer-sensor.toml", "copper_layers = 2", "copper_layers = 3")]
    [InlineData("profiles/cases/slab-dipped.toml", "kind = \"posed\"", "kind = \"other\"")]
    [InlineData("profiles/connectors/pin-header.toml", "surface = ", "surfaces = ")]
    [InlineData("profiles/contacts/bare.toml", "state = \"bare\"", "state = \"dry\"")]
    [InlineData("profiles/irons/fine.toml", "face_diameter = ", "diameter = ")]
    [InlineData("profiles/joints/jack-anchor-two-layer.toml", "shape = \"round\"", "shape = \"oval\"")]
    [InlineData("profiles/laminates/standard.toml", "density = ", "densities = ")]
    [InlineData("profiles/limits/damage.toml", "[pull.free]", "[pull.freely]")]
    [InlineData("profiles/limits/electrical-checks.toml", "2 ohm", "2 V")]
    [InlineData("profiles/limits/jumper-wires.toml", "preece_share", "share")]
    [InlineData("profiles/limits/laminate-classes.toml", "support = \"supported\"", "support = \"proven\"")]
    [InlineData("profiles/limits/planning.toml", "[most_dwell]", "[longest_dwell]")]
    [InlineData("profiles/limits/prior-heat.toml", "melts = true", "melts = 1")]
    [InlineData("profiles/limits/triage.toml", "15 min", "15 minutes")]
    [InlineData("profiles/limits/uncertainty.toml", "[relief]", "[reliefs]")]
    [InlineData("profiles/metals/brass.toml", "density = ", "densities = ")]
    [InlineData("profiles/pinouts/panel-jack-16.toml", "duty = \"ground\"", "duty = \"earth\"")]
    [InlineData("profiles/preheat/hot-plate.toml", "gap = ", "gaps = ")]
    [InlineData("profiles/removal/braid.toml", "efficiency = ", "efficency = ")]
    [InlineData("profiles/requests/pump-controller-jack.toml", "side = \"bottom\"", "side = \"left\"")]
    [InlineData("profiles/rooms/still-air.toml", "room = ", "rooms = ")]
    [InlineData("profiles/wires/ptfe.toml", "insulated = true", "insulated = \"yes\"")]
    public void A_mistake_in_any_kind_of_file_is_found(string file, string good, string bad)
    {
        using ShippedCopy copy = new();
        copy.Spoil(file, good, bad);
        Assert.Contains(DataFolderCheck.Run(copy.Data), l => l.File == file && l.Outcome is CheckOutcome.Broken);
    }
}
