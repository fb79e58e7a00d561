using System.Numerics;

namespace Condyle.Runtime.Tests.Embedding;

/// <summary>Pages show how a game embeds the runtime, and motion in C#; this runs it, and holds the pages to it.</summary>
public class EmbeddingTests
{
    private static readonly CompiledRig Rig = RigCompiler.Compile(Condyle.Rig.Build(new ArmWithHand()));

    [Theory]
    [InlineData("DockWorker.cs", "embedding.md")]
    [InlineData("Greeting.cs", "motion.md")]
    [InlineData("Actor.cs", "motion.md")]
    public void A_page_shows_the_code(string file, string page)
    {
        var source = File.ReadAllText(Path.Combine(Root(), "tests/Condyle.Runtime.Tests/Embedding", file));
        var shown = source[source.IndexOf("/// <summary>", StringComparison.Ordinal)..].TrimEnd();
        Assert.InRange(shown.Split('\n').Length, 1, 35);
        Assert.Contains($"```csharp\n{shown}\n```", File.ReadAllText(Path.Combine(Root(), "docs", page)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_game_sets_evaluates_and_reads()
    {
        var worker = new DockWorker(Rig);
        worker.Update(new(-0.1f, 0.1f, 0.1f), Quaternion.Identity, grip: 0.5f);
        var wrist = Rig.JointIndex("wrist_left");
        Assert.Equal(worker.Crate, worker.Joints[wrist].Translation);
        Assert.True(Vector3.Distance(new(0.6f, 1.5f, 0.1f), worker.Crate) < 1e-5f, $"{worker.Crate}");
        Assert.Equal(0.5f, worker.Morphs[Rig.MorphIndex("body.fist")], 6);

        var before = worker.Joints.ToArray();
        worker.Carry();
        worker.Update(Vector3.Zero, Quaternion.Identity, grip: 0.5f);
        for (var joint = 0; joint < before.Length; joint++)
            Assert.True(Vector3.Distance(before[joint].Translation, worker.Joints[joint].Translation) < 1e-5f);
    }

    [Fact]
    public void A_clip_over_a_clip_moves_what_is_under_its_control()
    {
        var walk = new Clip("walk", 4).MoveAlong("chest", Axis.Z, (0, 0), (4, 4)).MoveAlong("hand_left", Axis.Z, (0, 0), (4, 4));
        var instance = Rig.NewInstance();
        new ClipPlayer(Rig, Greeting.WalkAndWave(walk)).Pose(instance, 1);
        Assert.Equal(1, instance.ControlMove(Rig.ControlIndex("hand_left")).Z, 1e-5);
        Assert.Equal(-70, 2 * Math.Atan2(instance.ControlTurn(Rig.ControlIndex("turn_elbow_left")).X, instance.ControlTurn(Rig.ControlIndex("turn_elbow_left")).W) * 180 / Math.PI, 1e-2);
    }

    [Fact]
    public void An_actors_wave_goes_onto_the_arm()
    {
        var folder = Directory.CreateTempSubdirectory("condyle-");
        try
        {
            var path = Path.Combine(folder.FullName, "wave.bvh");
            File.WriteAllText(path, "HIERARCHY\nROOT leftUpperArm\n{\nOFFSET 0 0 0\nCHANNELS 3 Zrotation Xrotation Yrotation\nJOINT leftLowerArm\n{\nOFFSET 25 0 0\nCHANNELS 3 Zrotation Xrotation Yrotation\n"
                + "JOINT leftHand\n{\nOFFSET 25 0 0\nCHANNELS 3 Zrotation Xrotation Yrotation\nEnd Site\n{\nOFFSET 9 0 0\n}\n}\n}\n}\nMOTION\nFrames: 2\nFrame Time: 0.1\n0 0 0 0 0 0 0 0 0\n20 0 0 30 0 0 0 0 0\n");
            var result = Actor.Wave(Rig, path);
            Assert.True(result.Largest.Degrees.Value < 0.1, $"{result.Largest}");
            Assert.Equal(["index_left"], result.NotInMotion);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_frame_allocates_nothing()
    {
        var worker = new DockWorker(Rig);
        worker.Update(Vector3.UnitY, Quaternion.Identity, 1);
        Assert.Contains(0, Enumerable.Range(0, 5).Select(_ =>
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            for (var frame = 0; frame < 100; frame++)
                worker.Update(Vector3.UnitX * (frame * 0.01f), Quaternion.Identity, 0.2f);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }));
    }

    [Fact]
    public void Too_little_room_is_refused()
    {
        var instance = Rig.NewInstance();
        Assert.Contains("has 4 joints, and there is room for 3", Assert.Throws<ArgumentException>(() => instance.CopyJointWorlds(new Matrix4x4[3])).Message, StringComparison.Ordinal);
        Assert.Contains("has 1 morph targets, and there is room for 0", Assert.Throws<ArgumentException>(() => instance.CopyMorphWeights([])).Message, StringComparison.Ordinal);
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Condyle.slnx")))
            folder = folder.Parent ?? throw new InvalidOperationException("The tests don't run inside the repository.");
        return folder.FullName;
    }

    /// <summary>A left arm with IK and FK, and a finger that curls.</summary>
    private sealed class ArmWithHand : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var shoulder = rig.Skeleton("worker").Root("shoulder_left", at: new Vector3(0.2f, 1.4f, 0));
            var elbow = shoulder.Child("elbow_left", at: new Vector3(0.25f, 0, -0.02f));
            var wrist = elbow.Child("wrist_left", at: new Vector3(0.25f, 0, 0.02f));
            var finger = wrist.Child("index_left", at: new Vector3(0.1f, 0, 0));

            var arm = rig.Chain(shoulder, wrist);
            var chest = rig.Control("chest").PlacedAt(shoulder);
            var parts = rig.Group("arm_left_group").PlacedAt(chest);
            rig.Drive(parts).ByMatrix(chest);
            var ik = arm.Copy("ik").Under(parts);
            var hand = rig.Control("hand_left").PlacedAt(wrist);
            rig.TwoBone(ik).Reach(hand).Face(rig.Control("elbow_pole_left").PlacedAt(ik.PolePoint(0.4f)));

            var fk = arm.Copy("fk").Under(parts);
            var above = chest;
            foreach (var joint in arm)
            {
                above = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(above);
            }

            var amount = hand.Switch("fk");
            rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
            var curl = hand.Dial("curl", 0, 1, unit: DialUnit.Share);
            rig.Response(curl).Key(0, 0).Key(1, 80).OntoTurn(finger, Axis.Z);
            rig.Response(curl).Key(0, 0).Key(1, 1).OntoMorph("body", "fist");
        }
    }
}
