using System.Numerics;

namespace Condyle.Tests.Rules;

public class JointLeavesRestTests
{
    [Fact]
    public void A_control_that_moves_nothing_where_the_joint_rests_is_named() => Assert.Contains("'turn_lamp'", Message(new Derrick(hasDial: false)), StringComparison.Ordinal);

    [Fact]
    public void A_control_that_is_there_for_its_dials_is_not_taken_for_it() => Assert.DoesNotContain("'turn_lamp'", Message(new Derrick(hasDial: true)), StringComparison.Ordinal);

    private static string Message(IRigDefinition definition) => Assert.Single(Rig.Examine(definition).Findings, finding => finding.Rule == "CDY8001").Message;

    private sealed class Derrick(bool hasDial) : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var mast = rig.Skeleton("derrick").Root("mast", at: new Vector3(0, 1, 0));
            var lamp = mast.Child("lamp", at: new Vector3(0, 1, 0));
            var turn = rig.Control("turn_mast").PlacedAt(mast);
            rig.Drive(mast).ByChannels(turn);
            var board = rig.Control("turn_lamp").PlacedAt(lamp);
            if (hasDial)
                rig.Response(board.Dial("glow", 0, 1)).Key(0, 0).Key(1, 1).OntoMorph("glass", "bright");
            rig.Drive(lamp).ByChannels(turn);
        }
    }
}
