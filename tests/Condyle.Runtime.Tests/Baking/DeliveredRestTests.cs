using System.Numerics;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Tests.Gltf;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Baking;

/// <summary>What a file's rest does to a bake: rounded rotations, scaled parents, places far from the origin.</summary>
public sealed class DeliveredRestTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Against three.js in Node.js, which takes a node's rotation as it stands, and so stretches what hangs below one that isn't of unit length.</summary>
    [SkippableFact]
    public void A_rotation_that_was_rounded_in_the_file_gets_a_track_so_that_players_agree()
    {
        var rig = Compiled(new Derrick(Vector3.Zero, 1));
        var json = DeliveredFile.Of(rig);
        json["nodes"]![1]!["rotation"] = new JsonArray(0, 0, 0.6, 0.8004);
        var rounded = Compiled(new Derrick(Vector3.Zero, 1, Quaternion.Normalize(new Quaternion(0, 0, 0.6f, 0.8004f))));
        RigBaker.Run(rounded, folder.Write("derrick.gltf", json.ToJsonString()), [Lift(0.5f)], folder["out.glb"]);

        var animation = GltfFile.Read(folder["out.glb"]).ParseJson()["animations"]![0]!;
        Assert.Contains(animation["channels"]!.AsArray(), channel => channel!["target"]!["node"]!.GetValue<int>() == 1 && channel["target"]!["path"]!.GetValue<string>() == "rotation");
        var played = OutsideChecks.Play(folder["out.glb"], "lift", [0.0], [0, 1, 2]);
        var live = rounded.NewInstance();
        foreach (var joint in rounded.Joints)
            Near.AssertEqual(played[0][joint.Index], live.JointWorld(joint.Index), 2e-5);
    }

    [Fact]
    public void A_slight_move_below_a_scaled_joint_is_not_taken_for_rounding()
    {
        var rig = Compiled(new Derrick(Vector3.Zero, 100));
        var baked = Bake.Run(rig, Lift(0.0001f));
        Assert.True(baked.Report.Holds);
        Assert.Contains(baked.Tracks, track => track is { Joint: 2, Translations: not null });
    }

    [Fact]
    public void Rounding_far_from_the_origin_is_not_taken_for_a_rest_that_moved()
    {
        var rig = Compiled(new Derrick(new Vector3(1000, 20, -3000), 1));
        var rest = RigBaker.Prepare(rig, folder.Write("derrick.gltf", DeliveredFile.Of(rig).ToJsonString()), [Lift(0.5f)]).Rest;
        Assert.Empty(rest.Moved);
    }

    private static CompiledRig Compiled(Derrick rig) => RigCompiler.Compile(Rig.Build(rig));

    private static Clip Lift(float metres) => new Clip("lift", 1).Move("lift", at: 0).Move("lift", at: 1, y: metres);

    /// <summary>A foot, a mast that stays at rest, and a hook that a control lifts.</summary>
    private sealed class Derrick(Vector3 at, float scale, Quaternion? mastTurned = null) : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var foot = rig.Skeleton("derrick").Root("foot", at: at, turned: Quaternion.Normalize(new Quaternion(0.1f, 0.7f, -0.2f, 0.6f)), scaled: new Vector3(scale));
            var mast = foot.Child("mast", at: new Vector3(0.3f, 2, 0.1f) / scale, turned: mastTurned ?? new Quaternion(0, 0, 0.6f, 0.8f));
            var hook = mast.Child("hook", at: new Vector3(0.5f, 1, 0.25f) / scale);
            rig.Drive(hook).ByChannels(rig.Control("lift").PlacedAt(hook));
        }
    }
}
