using ReworkThermal.Core.Boards;
using ReworkThermal.Data.Profiles;

namespace ReworkThermal.Data.Tests.Profiles;

public sealed class ProfileLibraryTests
{
    [Fact]
    public void Shipped_profiles_load_and_every_demo_joint_fits_its_board()
    {
        ProfileLibrary library = ProfileLibrary.Load(DataRoot.BesideProgram);

        JointSite six = library.Joints["jack-anchor-six-layer"].On(library.Boards["six-layer-controller"]);
        Assert.Equal(2, six.Joint.Connections.Count(c => c is PlaneConnection.Relieved { Spokes: 4 }));
        Assert.Equal(3, six.Neighbours.Count);
        _ = library.Joints["jack-anchor-two-layer"].On(library.Boards["two-layer-sensor"]);
        _ = library.Joints["jack-anchor-eight-layer"].On(library.Boards["eight-layer-drive"]);
        _ = library.Joints["terminal-pad-six-layer"].On(library.Boards["six-layer-controller"]);
        Assert.Equal(3, library.Irons.Count);
    }

    [Fact]
    public void A_joint_on_a_board_with_another_layer_count_is_refused()
    {
        ProfileLibrary library = ProfileLibrary.Load(DataRoot.BesideProgram);

        ImpossibleGeometryException problem = Assert.Throws<ImpossibleGeometryException>(
            () => library.Joints["jack-anchor-two-layer"].On(library.Boards["six-layer-controller"]));

        Assert.Equal("connection", problem.Field);
        Assert.Contains("has 6 copper layer(s)", problem.Message, StringComparison.Ordinal);
    }
}
