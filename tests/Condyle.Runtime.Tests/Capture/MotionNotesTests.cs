using System.Numerics;
using System.Text.RegularExpressions;
using Condyle.Runtime.Tests.Baking;
using Condyle.Runtime.Tests.Evaluation;
using Condyle.Runtime.Tests.Gltf;

namespace Condyle.Runtime.Tests.Capture;

/// <summary>What is said of limbs that can't follow a motion: of each limb once, and as it is where that limb is furthest off.</summary>
public sealed class MotionNotesTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Each_chain_is_told_once_where_it_is_furthest_off()
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var reel = rig.Skeleton("reel").Root("reel");
            foreach (var side in Side.Both)
                Rope(rig, reel, side, bones: 4);
        });
        var clip = new Clip("coil", 1);
        foreach (var side in Side.Both)
        {
            clip.Switch($"tip_{side}.fk", 0, 1).Turn($"turn_{side}_0", 0).Turn($"turn_{side}_0", 1, x: 20);
            clip.Turn($"turn_{side}_2", 0).Turn($"turn_{side}_2", 0.5f, z: -50).Turn($"turn_{side}_2", 1, z: -20);
        }

        var baked = folder["coil.gltf"];
        RigBaker.Run(rig, folder.Write("reel.gltf", DeliveredFile.Of(rig).ToJsonString()), [clip], baked);
        var notes = MotionMatch.Run(rig, JointMotion.FromGltf(baked)).Notes;

        var live = rig.NewInstance();
        foreach (var side in Side.Both)
        {
            var chain = $"From '{side}_0' to '{side}_4' the ";
            new ClipPlayer(rig, clip).Pose(live, 0.5f);
            var match = live.MatchGoal(rig.LimbIndex($"{side}_0"));
            var told = Assert.Single(notes, note => note.Contains($"{chain}solver gives another shape", StringComparison.Ordinal));
            Assert.StartsWith("0.5 s: ", told, StringComparison.Ordinal);
            Assert.Equal(match.Metres * 1000, double.Parse(Regex.Match(told, @"([\d.]+) mm off").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), 0.5);
            Assert.Single(notes, note => note.Contains($"{chain}chain's plane", StringComparison.Ordinal));
        }
    }

    /// <summary>Where it is first passed a limit says little: the pose goes on from there. The lock is in the way before the limit is passed, and most after that.</summary>
    [Fact]
    public void What_a_control_is_kept_from_is_told_as_it_is_where_that_is_most()
    {
        var (free, held) = (Mast(_ => { }), Mast(turn => turn.LimitTurn(Axis.X, -10, 20).Lock(Channels.TurnY)));
        var baked = folder["bend.gltf"];
        var clip = new Clip("bend", 2).Turn("turn", 0).Turn("turn", 1, x: 50, y: 10).Turn("turn", 2, x: 40, y: 30);
        RigBaker.Run(free, folder.Write("mast.gltf", DeliveredFile.Of(free).ToJsonString()), [clip], baked);
        Assert.Equal(
            ["1 s: 'turn' turns 50° about X, and its limits are -10° and 20°.", "2 s: 'turn' would have to turn 30° about Y, which is locked."],
            MotionMatch.Run(held, JointMotion.FromGltf(baked)).Notes);

        static CompiledRig Mast(Action<Control> hold) => DefinedRig.Compile(rig =>
        {
            var mast = rig.Skeleton("mast").Root("mast");
            var turn = rig.Control("turn").PlacedAt(mast);
            hold(turn);
            rig.Drive(mast).ByChannels(turn);
        });
    }

    [Fact]
    public void A_single_bone_is_twisted_and_has_no_plane()
    {
        var live = DefinedRig.Compile(rig => Rope(rig, rig.Skeleton("reel").Root("reel"), Side.Left, bones: 1)).NewInstance();
        var limb = Assert.Single(live.Rig.Limbs);
        live.SetTurn(limb.Turns[0], Quaternion.CreateFromYawPitchRoll(0, 0, 0.3f));
        Assert.Equal([MatchNoteKind.Twisted], live.MatchGoal(limb.Index).Notes.Select(note => note.Kind));
    }

    /// <summary>Bones with many-bone IK, which no pole turns, and FK.</summary>
    private static void Rope(RigDraft rig, Joint reel, Side side, int bones)
    {
        var joints = new List<Joint>();
        for (var i = 0; i <= bones; i++)
            joints.Add((i == 0 ? reel : joints[^1]).Child($"{side}_{i}", at: i == 0 ? new Vector3(side == Side.Left ? 0.3f : -0.3f, 1, 0) : new Vector3(0, 0.04f * (i - 2.5f), 0.2f)));
        var rope = rig.Chain(joints[0], joints[^1]);
        var (ik, fk) = (rope.Copy("ik"), rope.Copy("fk"));
        var tip = rig.Control($"tip_{side}").PlacedAt(rope.Tip);
        rig.ManyBone(ik).Reach(tip);
        Control? above = null;
        foreach (var joint in rope)
        {
            var turn = rig.Control($"turn_{joint.Name}").PlacedAt(joint);
            above = above is { } hung ? turn.Under(hung) : turn;
            rig.Drive(fk.Of(joint)).ByChannels(turn);
        }

        var amount = tip.Switch("fk");
        rig.Blend(rope).From(ik, amount.Inverse).From(fk, amount);
    }
}
