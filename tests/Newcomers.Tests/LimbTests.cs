using Condyle.Runtime.Gltf;

namespace Newcomers.Tests;

public sealed class LimbTests : IDisposable
{
    private readonly Harbour harbour = new();

    public void Dispose() => harbour.Dispose();

    [Theory]
    [InlineData("nothing odd")]
    [InlineData("a root scaled by 100 that brings Z up to Y")]
    [InlineData("helpers between the bones")]
    [InlineData("twists between the bones")]
    [InlineData("a skinned mesh, props and a camera below joints")]
    [InlineData("a straight arm and leg")]
    public void An_arm_and_a_leg_are_found_by_their_structure(string oddity) =>
        Assert.Equal(["shoulder_left elbow_left wrist_left", "hip_right knee_right ankle_right"], Limbs(Arrivals.All[oddity]()).Order(StringComparer.Ordinal).Reverse());

    [Fact]
    public void Neither_the_spine_nor_bones_of_no_length_are_limbs() => Assert.Empty(Limbs(Arrivals.All["bones of no length"]()));

    [Fact]
    public void A_marker_at_the_end_of_the_last_bone_is_a_limbs_tip()
    {
        var character = new Character().AddBody();
        character.AddSkin(character.Body.Where(bone => bone.Key is not ("wrist_left" or "ankle_right")).Select(bone => bone.Value));
        Assert.Contains("hip_right knee_right ankle_right", Limbs(character));
    }

    [Theory]
    [InlineData(0.001f, 0)]
    [InlineData(0, 0.001f)]
    public void Of_fingers_that_are_about_as_long_the_middle_one_is_the_hands_tip(float first, float last)
    {
        var character = new Character().AddBody();
        var bones = character.Body.Where(bone => bone.Key != "wrist_left").Select(bone => bone.Value).ToList();
        foreach (var (name, length, z) in new[] { ("palm_1", 0.26f + first, 0.03f), ("palm_2", 0.26f, 0), ("palm_3", 0.26f + last, -0.03f), ("thumb", 0.15f, 0.06f) })
        {
            bones.Add(character.AddNode(new() { ["name"] = name, ["translation"] = Character.Numbers(length, 0, z) }, character.Body["elbow_left"]));
            bones.Add(character.AddNode(new() { ["name"] = name + "_finger", ["translation"] = Character.Numbers(0.05f, 0, 0) }, bones[^1]));
        }

        character.AddSkin(bones);
        Assert.Contains("shoulder_left elbow_left palm_2", Limbs(character));
    }

    [Fact]
    public void A_goal_switched_on_takes_the_limb_and_the_joints_below_it_follow()
    {
        var file = GltfFile.Read(harbour.Write("newcomer.glb", Arrivals.All["a skinned mesh, props and a camera below joints"]().Glb()));
        var rig = Condyle.Runtime.RigCompiler.Compile(Condyle.Rig.Build(new Newcomer(file, GltfSkeleton.Read(file))));
        var (live, end) = (rig.NewInstance(), rig.JointIndex("foot_end"));
        var before = live.JointWorld(end).Translation;
        live.SetSwitch(rig.SwitchIndex("reach_ankle_right.ik"), 1);
        live.SetMove(rig.ControlIndex("reach_ankle_right"), new(0, 0.2f, 0.1f));
        live.Evaluate();
        var moved = live.JointWorld(end).Translation - before;
        Assert.True((moved - new System.Numerics.Vector3(0, 0.2f, 0.1f)).Length() < 1e-5f, $"moved by {moved}");
    }

    private IEnumerable<string> Limbs(Character character)
    {
        var file = GltfFile.Read(harbour.Write("newcomer.glb", character.Glb()));
        var skeleton = GltfSkeleton.Read(file);
        return [.. new Newcomer(file, skeleton).Limbs.Select(limb => string.Join(' ', limb.Bones.Select(bone => skeleton.Joints[bone].Name)))];
    }
}
