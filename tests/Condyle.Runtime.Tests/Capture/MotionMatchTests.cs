using System.Numerics;
using Condyle.Evaluation;
using Condyle.Runtime.Tests.Baking;
using Condyle.Runtime.Tests.Evaluation;
using Condyle.Runtime.Tests.Gltf;

namespace Condyle.Runtime.Tests.Capture;

/// <summary>Motion of joints, an actor's or an older skeleton's, on the controls of a rig.</summary>
public sealed class MotionMatchTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(LimbCopy.Turned)]
    [InlineData(LimbCopy.Solved)]
    public void A_character_does_what_the_actor_does(LimbCopy limbs)
    {
        var rig = Walker.Character();
        var motion = JointMotion.FromBvh(folder.Write("walk.bvh", Walker.Text()));
        var result = MotionMatch.Run(rig, motion, Walker.Names, new MotionMatchSettings { Limbs = limbs });
        Assert.Equal(["root"], result.NotInMotion);
        Assert.Empty(result.NotInRig);
        Assert.Equal([limbs == LimbCopy.Turned ? 1 : 0], result.Clip.Switches["hand_left.fk"].Values);

        // A solver bends an elbow as a hinge; his own is twisted, so it is told how far it is off, and the wrist is right all the same.
        foreach (var joint in result.Joints.Where(joint => joint.From is not null && (limbs == LimbCopy.Turned || joint.Joint is not ("elbow_left" or "shoulder_left"))))
            Assert.True(joint.Off.Metres.Value < 1e-4 && joint.Off.Degrees.Value < 0.02, $"{joint}\n{string.Join("\n", result.Notes)}");
        Assert.Contains(result.Notes, note => note.StartsWith("0 s: 'elbow_left' is twisted by", StringComparison.Ordinal));

        // What the clip plays, against the actor himself: bones point as his do, and the hips go as far as he goes, in proportion.
        var (player, live) = (new ClipPlayer(rig, result.Clip), rig.NewInstance());
        var size = 1.9 / 95;
        foreach (var time in new[] { 0, 0.2f, 0.45f })
        {
            player.Pose(live, time);
            live.Evaluate();
            var actor = motion.Worlds(time);
            if (limbs == LimbCopy.Turned)
            {
                AssertAlong(actor[3].Origin - actor[2].Origin, live, "shoulder_left", "elbow_left", rig);
                AssertAlong(actor[4].Origin - actor[3].Origin, live, "elbow_left", "wrist_left", rig);
            }

            AssertNear(actor[0].Origin * size, live.JointWorld(rig.JointIndex("pelvis")).Translation);
        }
    }

    [Fact]
    public void A_clip_of_the_same_skeleton_comes_back_whichever_policy()
    {
        var rig = Walker.Character();
        var clip = new Clip("reach", 1).Turn("body", 0).Turn("body", 1, 10, 30, 5).Move("body", 0).Move("body", 1, 0.2f, 0.1f).Turn("turn_chest", 0.5f, 0, 20).Move("hand_left", 0).Move("hand_left", 1, 0.1f, 0.3f, 0.2f).Move("world", 0).Move("world", 1, z: 1);
        var file = Baked(rig, clip);
        foreach (var policy in Enum.GetValues<RestPolicy>())
        {
            var result = MotionMatch.Run(rig, JointMotion.FromGltf(file), settings: new MotionMatchSettings { Rest = policy });
            Assert.True(result.Largest.Metres.Value < 1e-4 && result.Largest.Degrees.Value < 0.02, $"{policy}: {result.Largest}\n{string.Join("\n", result.Notes)}");
            var (before, after) = (rig.NewInstance(), rig.NewInstance());
            new ClipPlayer(rig, clip).Pose(before, 1);
            new ClipPlayer(rig, result.Clip).Pose(after, 1);
            before.Evaluate();
            after.Evaluate();
            foreach (var joint in rig.Joints)
                Assert.True(Vector3.Distance(before.JointWorld(joint.Index).Translation, after.JointWorld(joint.Index).Translation) < 2e-4f, $"{policy}: {joint.Name}");
        }
    }

    /// <summary>A crane's slew, with the other turns locked: past a quarter of a turn it was once taken for half turns about what is locked.</summary>
    [Fact]
    public void A_control_that_turns_about_one_axis_alone_goes_all_the_way_round()
    {
        foreach (var axis in Enum.GetValues<Axis>())
        {
            var rig = DefinedRig.Compile(rig =>
            {
                var mast = rig.Skeleton("crane").Root("mast", turned: Quaternion.Normalize(new Quaternion(0.2f, 0.4f, -0.1f, 0.8f)));
                var jib = mast.Child("jib", at: new(0, 3, 2));
                var free = axis switch { Axis.X => Channels.TurnX, Axis.Y => Channels.TurnY, _ => Channels.TurnZ };
                var slew = rig.Control("slew").PlacedAt(mast).Lock(Channels.All & ~free);
                rig.Drive(mast).ByChannels(slew);
                rig.Drive(jib).ByChannels(rig.Control("luff").Under(slew).PlacedAt(jib));
            });
            var clip = new Clip("round", 4).TurnAbout("slew", axis, (0, 0), (1, 100), (2, 200), (3, 300), (4, 400));
            var result = MotionMatch.Run(rig, JointMotion.FromGltf(Baked(rig, clip)));
            Assert.True(result.Largest.Metres.Value < 1e-4 && result.Largest.Degrees.Value < 0.02, $"{axis}: {result.Largest}\n{string.Join("\n", result.Notes)}");
            Assert.Empty(result.Notes);
        }
    }

    /// <summary>A crane on its rails: that it can't leave them is no reason to stand still.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_control_that_moves_along_one_axis_alone_goes_along_it(bool hasMover)
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var ground = rig.Skeleton("crane").Root("ground", turned: Quaternion.Normalize(new Quaternion(0.2f, 0.4f, -0.1f, 0.8f)));
            var portal = ground.Child("portal", at: new(0, 3, 2));
            var world = rig.Control("world").PlacedAt(ground);
            rig.Drive(ground).ByChannels(world);
            var above = hasMover ? rig.Control("yard").Under(world).PlacedAt(portal) : world;
            rig.Drive(portal).ByChannels(rig.Control("travel").Under(above).PlacedAt(portal).Lock(Channels.MoveY | Channels.MoveZ | Channels.Turn));
        });
        var clip = new Clip("run", 2).Move("world", 0).Move("world", 2, z: 1).Move("travel", 0).Move("travel", 1, x: 20).Move("travel", 2, x: -5);
        var result = MotionMatch.Run(rig, JointMotion.FromGltf(Baked(rig, clip)));
        Assert.True(result.Largest.Metres.Value < 1e-4 && result.Largest.Degrees.Value < 0.02, $"{result.Largest}");
        Assert.Empty(result.Notes);
    }

    [Fact]
    public void Where_the_rest_was_posed_anew_the_policy_says_what_is_kept()
    {
        // The arm of the new skeleton rests 40 degrees lower; in the old clip it is raised by 50.
        var (old, now) = (Walker.Character(-20), Walker.Character(-60));
        var file = Baked(old, new Clip("raise", 1).Switch("hand_left.fk", 0, 1).Turn("turn_shoulder_left", 0).Turn("turn_shoulder_left", 1, Raised(old, 50)));
        Assert.Equal(-20, Height(old, old.NewInstance()), 0.1);
        Assert.Equal(30, Height(now, Matched(RestPolicy.KeepDirections)), 0.1);
        Assert.Equal(30, Height(now, Matched(RestPolicy.KeepFrames)), 0.1);
        Assert.Equal(-10, Height(now, Matched(RestPolicy.KeepTurns)), 0.1);

        RigInstance Matched(RestPolicy policy)
        {
            var live = now.NewInstance();
            new ClipPlayer(now, MotionMatch.Run(now, JointMotion.FromGltf(file, "raise"), settings: new MotionMatchSettings { Rest = policy }).Clip).Pose(live, 1);
            live.Evaluate();
            return live;
        }
    }

    [Fact]
    public void Renamed_joints_are_found_by_the_map()
    {
        var rig = Walker.Character();
        var file = Baked(rig, new Clip("reach", 1).Turn("turn_chest", 0).Turn("turn_chest", 1, 0, 40));
        var renamed = folder.Write("renamed.gltf", File.ReadAllText(file).Replace("\"chest\"", "\"ribcage\"", StringComparison.Ordinal));
        var result = MotionMatch.Run(rig, JointMotion.FromGltf(renamed), new JointMap().With("ribcage", "chest"));
        Assert.Empty(result.NotInMotion);
        Assert.Equal("ribcage", result.Joints.Single(joint => joint.Joint == "chest").From);
        Assert.True(result.Largest.Degrees.Value < 0.02, $"{result.Largest}");
        Assert.Equal(40, Angle(result.Clip.Turned["turn_chest"].At(1)), 0.05);

        var lost = MotionMatch.Run(rig, JointMotion.FromGltf(renamed));
        Assert.Equal(["chest"], lost.NotInMotion);
        Assert.Equal(["ribcage"], lost.NotInRig);
    }

    [Theory]
    [InlineData(LimbCopy.Turned)]
    [InlineData(LimbCopy.Solved)]
    public void Keys_are_left_out_as_far_as_the_tolerance_goes(LimbCopy limbs)
    {
        var rig = Walker.Character();
        var motion = JointMotion.FromBvh(folder.Write("walk.bvh", Walker.Text()));
        var whole = MotionMatch.Run(rig, motion, Walker.Names, new MotionMatchSettings { Limbs = limbs, FramesPerSecond = 120 });
        var thin = MotionMatch.Run(rig, motion, Walker.Names, new MotionMatchSettings { Limbs = limbs, FramesPerSecond = 120, Keys = new(0.002, 0.3) });
        Assert.True(3 * KeysOf(thin.Clip) < 2 * KeysOf(whole.Clip), $"{KeysOf(thin.Clip)} of {KeysOf(whole.Clip)}");
        var (should, actual) = (rig.NewInstance(), rig.NewInstance());
        var (wholePlayer, thinPlayer) = (new ClipPlayer(rig, whole.Clip), new ClipPlayer(rig, thin.Clip));
        for (var frame = 0; frame <= whole.Clip.Seconds * 120; frame++)
        {
            wholePlayer.Pose(should, frame / 120f);
            thinPlayer.Pose(actual, frame / 120f);
            should.Evaluate();
            actual.Evaluate();
            Assert.All(rig.Joints, joint => Assert.True(Vector3.Distance(should.JointWorld(joint.Index).Translation, actual.JointWorld(joint.Index).Translation) <= 0.002 + 1e-5, joint.Name));
        }

        static int KeysOf(Clip clip) => clip.Moves.Values.Sum(track => track.Times.Count) + clip.Turned.Values.Sum(track => track.Times.Count);
    }

    [Fact]
    public void It_can_be_stopped_while_keys_are_left_out()
    {
        var motion = JointMotion.FromBvh(folder.Write("walk.bvh", Walker.Text()));
        using var stop = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() => MotionMatch.Run(Walker.Character(), motion, Walker.Names, new MotionMatchSettings { Keys = new(0.002, 0.3) }, new StopsWhenMatched(stop), stop.Token));
    }

    private sealed class StopsWhenMatched(CancellationTokenSource stop) : IProgress<double>
    {
        public void Report(double value)
        {
            if (value >= 1)
                stop.Cancel();
        }
    }

    [Fact]
    public void A_tolerance_that_is_rounding_is_told()
    {
        var motion = JointMotion.FromBvh(folder.Write("walk.bvh", Walker.Text(frames: 2)));
        var told = Assert.Throws<BadInputException>(() => MotionMatch.Run(Walker.Character(), motion, Walker.Names, new MotionMatchSettings { Keys = new(0, 1) }));
        Assert.Contains("can't have keys within 0 mm and 1°", told.Message, StringComparison.Ordinal);
    }

    public static TheoryData<string, string> WrongMaps => new()
    {
        { "hips", " 'hipps' at motion 'walk' is mapped, but the motion has no such joint. The nearest: 'hips', " },
        { "pelvis", " 'hips' at motion 'walk' is mapped to 'pelviss', which is no joint of the rig 'Rig'. The nearest: 'pelvis'." },
        { "twice", " 'upperChest' at motion 'walk' is mapped to 'chest', and so is 'hips'. Map one of them." },
        { "none", " motion 'walk' has no joint of the rig 'Rig'. Say by a JointMap, or by --joint, which is which. Its joints: 'hips', 'upperChest', 'leftUpperArm', 'leftLowerArm', 'leftHand', 'leftFoot'." },
    };

    [Theory]
    [MemberData(nameof(WrongMaps))]
    public void A_wrong_map_is_told(string wrong, string message)
    {
        var path = folder.Write("walk.bvh", Walker.Text(frames: 2));
        var map = wrong switch
        {
            "hips" => new JointMap().With("hipps", "pelvis"),
            "pelvis" => new JointMap().With("hips", "pelviss"),
            "twice" => new JointMap().With("upperChest", "chest").With("hips", "chest"),
            _ => new JointMap(),
        };
        var told = Assert.Throws<BadInputException>(() => MotionMatch.Run(Walker.Character(), JointMotion.FromBvh(path), map)).Message;
        Assert.StartsWith($"{path}:{message[..^2]}", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lamp", "hook")]
    [InlineData("hook", "lamp")]
    public void What_is_aimed_at_and_carries_a_joint_goes_where_that_joint_is(string first, string second)
    {
        var rig = Lighthouse(first, second, carries: true);
        var file = Baked(rig, new Clip("swing", 1).Move("target", 0).Move("target", 1, 0.5f, 0.2f, 0.3f).Turn("target", 0).Turn("target", 1, 0, 40));
        var result = MotionMatch.Run(rig, JointMotion.FromGltf(file));
        Assert.True(result.Largest.Metres.Value < 1e-4 && result.Largest.Degrees.Value < 0.02, $"{result.Largest}");
    }

    [Fact]
    public void What_is_aimed_at_stays_as_far_away_as_at_rest_however_far_the_character_goes()
    {
        var rig = Lighthouse("lamp", "hook", carries: false);
        var file = Baked(rig, new Clip("walk", 1).Move("world", 0).Move("world", 1, z: 5).Move("target", 0).Move("target", 1, 1, 0, 5));
        var result = MotionMatch.Run(rig, JointMotion.FromGltf(file));
        Assert.True(result.Largest.Degrees.Value < 0.02, $"{result.Largest}");
        var (live, player) = (rig.NewInstance(), new ClipPlayer(rig, result.Clip));
        foreach (var time in new[] { 0, 0.4f, 1 })
        {
            player.Pose(live, time);
            live.Evaluate();
            var stands = new Vector3(0, 2, 2) + live.ControlMove(rig.ControlIndex("target"));
            Assert.Equal(2, Vector3.Distance(stands, live.JointWorld(rig.JointIndex("lamp")).Translation), 3);
        }
    }

    [Fact]
    public void What_is_aimed_at_and_locked_is_told()
    {
        var free = Lighthouse("lamp", "hook", carries: false);
        var file = Baked(free, new Clip("look", 1).Move("target", 0).Move("target", 1, 0.5f, 0, 0));
        var result = MotionMatch.Run(Lighthouse("lamp", "hook", carries: false, locked: Channels.Move), JointMotion.FromGltf(file));
        Assert.Contains(result.Notes, note => note.Contains("'target' would have to move", StringComparison.Ordinal) && note.Contains("along X, which is locked.", StringComparison.Ordinal));
        Assert.Empty(MotionMatch.Run(free, JointMotion.FromGltf(file)).Notes);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public void A_scale_that_cannot_be_is_told(double scale)
    {
        var motion = JointMotion.FromBvh(folder.Write("walk.bvh", Walker.Text(frames: 2)));
        var told = Assert.Throws<BadInputException>(() => MotionMatch.Run(Walker.Character(), motion, Walker.Names, new MotionMatchSettings { Scale = scale }));
        Assert.Contains("can't be scaled by", told.Message, StringComparison.Ordinal);
    }

    /// <summary>A lamp that is aimed at a target two metres before it, which stays when the lighthouse goes.</summary>
    private static CompiledRig Lighthouse(string first, string second, bool carries, Channels locked = Channels.None) => DefinedRig.Compile(rig =>
    {
        var root = rig.Skeleton("lighthouse").Root("root", at: new(0, 1, 0));
        var joints = new[] { first, second }.ToDictionary(name => name, name => root.Child(name, at: name == "lamp" ? new(0, 1, 0) : new(0, 1, 2)));
        var world = rig.Control("world").PlacedAt(root);
        rig.Drive(root).ByChannels(world);
        var target = rig.Control("target").PlacedAt(joints["hook"]);
        if (locked != Channels.None)
            target.Lock(locked);
        if (carries)
            rig.Drive(joints["hook"]).ByChannels(target);
        rig.Aim(joints["lamp"]).At(target).Up(rig.Group("up_group").Under(world).PlacedAt(rig.Spot(joints["lamp"], Vector3.UnitY)));
    });

    private string Baked(CompiledRig rig, Clip clip)
    {
        var baked = folder[$"{clip.Name}.gltf"];
        RigBaker.Run(rig, folder.Write("delivered.gltf", DeliveredFile.Of(rig).ToJsonString()), [clip], baked);
        return baked;
    }

    /// <summary>A turn of the shoulder's control that raises the arm about the world's Z axis.</summary>
    private static Quaternion Raised(CompiledRig rig, float degrees)
    {
        var control = rig.LimbTable.Controls.Single(control => control.Name.ToString() == "turn_shoulder_left");
        var stands = rig.LimbTable.Rest.WorldOf(control).Rotation;
        return (stands.Inverse * Quaterniond.About(Vector3d.UnitZ, degrees * Math.PI / 180) * stands).ToSingle();
    }

    /// <summary>How high the upper arm points, in degrees.</summary>
    private static double Height(CompiledRig rig, RigInstance live)
    {
        var along = live.JointWorld(rig.JointIndex("elbow_left")).Translation - live.JointWorld(rig.JointIndex("shoulder_left")).Translation;
        return Math.Asin(along.Y / along.Length()) * 180 / Math.PI;
    }

    private static double Angle(Quaternion turn) => 2 * Math.Acos(Math.Min(1, Math.Abs(turn.W))) * 180 / Math.PI;

    private static void AssertAlong(Vector3d wanted, RigInstance live, string from, string to, CompiledRig rig)
    {
        var along = live.JointWorld(rig.JointIndex(to)).Translation - live.JointWorld(rig.JointIndex(from)).Translation;
        Assert.True(Vector3.Distance(wanted.ToSingle() / (float)wanted.Length, Vector3.Normalize(along)) < 2e-3f, $"{from}: {along} is not along {wanted}");
    }

    private static void AssertNear(Vector3d wanted, Vector3 found) => Assert.True(Vector3.Distance(wanted.ToSingle(), found) < 1e-3f, $"{found} is not {wanted}");
}
