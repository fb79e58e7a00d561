using Condyle.Naming;
using CsCheck;

namespace Condyle.Analyzers.Tests.Skeletons;

public class JointNamesTests
{
    [Fact]
    public void Names_that_differ_stay_as_they_are() =>
        Assert.Equal(["hip", "Hip", "knee"], JointNames.Unique(["hip", "Hip", "knee"]));

    [Fact]
    public void A_node_without_a_name_is_called_by_its_index() =>
        Assert.Equal(["node_0", "hip", "node_2"], JointNames.Unique([null, "hip", "  "]));

    [Fact]
    public void The_second_of_a_name_adds_its_index() =>
        Assert.Equal(["hip", "hip_1", "hip_2"], JointNames.Unique(["hip", "hip", "hip"]));

    [Fact]
    public void A_name_that_the_file_gives_is_never_taken_away() =>
        Assert.Equal(["hip", "hip_1_1", "hip_1", "node_3_3", "node_3"], JointNames.Unique(["hip", "hip", "hip_1", null, "node_3"]));

    [Fact]
    public void No_two_names_are_alike()
    {
        string?[] given = [null, "", "a", "a_1", "a_2", "a_1_1", "node", "node_1", "node_2", "node_1_1"];
        Gen.Int[0, given.Length - 1].List[0, 12].Sample(picks =>
            JointNames.Unique([.. picks.Select(pick => given[pick])]).Distinct().Count() == picks.Count);
    }
}
