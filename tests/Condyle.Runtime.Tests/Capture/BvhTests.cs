using System.Text.Json;
using Condyle.Evaluation;
using Condyle.Runtime.Tests.Gltf;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Capture;

/// <summary>Motion capture as BVH has it.</summary>
public sealed class BvhTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Against three.js (BVHLoader, AnimationMixer): every joint's frame in the world, on frames and between them.</summary>
    [SkippableFact]
    public void A_file_is_read_as_three_js_reads_it()
    {
        var path = folder.Write("walk.bvh", Walker.Text());
        var motion = JointMotion.FromBvh(path);
        Assert.Equal(Walker.Joints, motion.JointNames);
        Assert.Equal(("walk", 60), (motion.Name, Math.Round(motion.FramesPerSecond!.Value, 3)));
        double[] times = [0, 1 / 60.0, 0.1, 0.333, 0.5, motion.Seconds];
        var played = JsonSerializer.Deserialize<double[][][]>(OutsideChecks.Run("capture.mjs", JsonSerializer.Serialize(new { times, joints = Walker.Joints }), path))!;
        foreach (var (index, time) in times.Index())
        {
            foreach (var (joint, world) in motion.Worlds((float)time).Index())
                Near.AssertEqual(Columns(world), played[index][joint], 2e-3, $"{Walker.Joints[joint]} at {time} s:");
        }
    }

    [Fact]
    public void A_file_whose_Z_axis_points_up_stands_up()
    {
        var motion = JointMotion.FromBvh(folder.Write("up.bvh", Walker.Text()), Axis.Z);
        var lying = JointMotion.FromBvh(folder["up.bvh"]);
        var (up, down) = (motion.Worlds(0.2f)[2], lying.Worlds(0.2f)[1]);
        Assert.Equal(Walker.Joints, motion.JointNames);
        Assert.True((up.Origin - new Vector3d(down.Origin.X, down.Origin.Z, -down.Origin.Y)).Length < 1e-9, $"{up} {down}");
    }

    public static TheoryData<string, string, string> BadLines => new()
    {
        { "OFFSET 0 20 1", "OFFSET 0 1e30 1", " at line 8 the offset of 'upperChest' along Y is 1E+30, which is beyond 100000000. Export the file again." },
        { " 19 20 21\n", " 19 20 1e38\n", " at line 43 number 21 of frame 0 is 1E+38, which is beyond 100000000. Export the file again." },
        { "HIERARCHY", "HIERACHY", " at line 1 the file doesn't begin with HIERARCHY, so it is no BVH file. Name a BVH file." },
        { "OFFSET 0 20 1", "OFFSET 0 x 1", " at line 8 the offset of 'upperChest' along Y is 'x', which is no finite number. Write a number with a point, such as -12.5." },
        { "OFFSET 0 20 1", "OFFSET 0 20", " at line 8 the offset of 'upperChest' along Z is missing. Write a number." },
        { "OFFSET 0 20 1", "OFFSET 0 1e99 1", " at line 8 the offset of 'upperChest' along Y is '1e99', which is no finite number. Write a number with a point, such as -12.5." },
        { "CHANNELS 3 Yrotation Xrotation Zrotation", "CHANNELS 2 Yrotation Xrotation Zrotation", " 'upperChest' at line 9 claims 2 channels and names 3. Export the file again." },
        { "CHANNELS 3 Yrotation Xrotation Zrotation", "CHANNELS 3 Yrotation Yrotation Zrotation", " 'upperChest' at line 9 has the channel 'Yrotation' twice. The channels are Xposition, Yposition, Zposition, Xrotation, Yrotation, Zrotation." },
        { "CHANNELS 3 Yrotation Xrotation Zrotation", "CHANNELS 3 Wrotation Xrotation Zrotation", " 'upperChest' at line 9 has a channel 'Wrotation'. The channels are Xposition, Yposition, Zposition, Xrotation, Yrotation, Zrotation." },
        { "JOINT upperChest", "JOINT hips", " 'hips' at line 6 is the name of two joints. Give each joint its own name." },
        { "JOINT upperChest", "BONE upperChest", " at line 6 there is 'BONE' where JOINT, End Site or '}' should stand. Export the file again." },
        { "MOTION", "", " at line 41 there is 'Frames:' where ROOT or MOTION should stand. Export the file again." },
        { "Frames: 2", "Frames: 2000000000", " at line 42 the file claims 2000000000 frames of 21 numbers, more than its 106 bytes of frames can hold. Export or copy the file again." },
        { "Frames: 2", "Frames: 0", " at line 41 there are no frames. Export the file again." },
        { "Frames: 2", "Frames: 3", " at line 42 the file claims 3 frames of 21 numbers, more than its 106 bytes of frames can hold. Export or copy the file again." },
        { "Frames: 2", "Frames: 1", " at line 44 there are more lines than the 1 frames that the file claims. Export or copy the file again." },
        { "Frames: 2", "Frames: -2", " at line 41 the number of frames is -2, which is no whole number from 0 to 2147483647. Export the file again." },
        { "Frame Time: 0.02", "Frame Time: 0", " at line 42 a frame lasts 0 s. Write a time above zero." },
        { " 19 20 21\n", " 19 20\n", " at line 43 number 21 of frame 0 is missing. Write a number." },
        { " 19 20 21\n", " 19 20 21 22\n", " at line 43 frame 0 has more numbers than the joints have channels. Export the file again." },
        { " 19 20 21\n", " 19 20,5 21\n", " at line 43 number 20 of frame 0 is '20,5', which is no finite number. Write a number with a point, such as -12.5." },
    };

    [Theory]
    [MemberData(nameof(BadLines))]
    public void A_bad_line_is_told_with_file_and_line(string good, string bad, string message)
    {
        var numbers = string.Join(' ', Enumerable.Range(1, 21)) + "\n";
        var text = Walker.Hierarchy.Trim() + "\nMOTION\nFrames: 2\nFrame Time: 0.02\n" + numbers + numbers.Trim()[..^1];
        var at = text.IndexOf(good, StringComparison.Ordinal);
        var path = folder.Write("bad.bvh", text[..at] + bad + text[(at + good.Length)..]);
        Assert.Equal($"{path}:{message}", Assert.Throws<BadInputException>(() => JointMotion.FromBvh(path)).Message);
    }

    [Fact]
    public void A_brace_may_stand_behind_the_name_and_words_in_any_case()
    {
        var text = Walker.Text(frames: 2);
        var (plain, other) = (JointMotion.FromBvh(folder.Write("a.bvh", text)), JointMotion.FromBvh(folder.Write("b.bvh", text.Replace("JOINT leftUpperArm\n            {", "joint  leftUpperArm\t{", StringComparison.Ordinal).Replace("OFFSET", "Offset", StringComparison.Ordinal))));
        Assert.Equal(plain.JointNames, other.JointNames);
        Assert.Equal(plain.Worlds(0.01f), other.Worlds(0.01f));
    }

    [Fact]
    public void The_brace_of_an_end_may_stand_behind_it()
    {
        var text = System.Text.RegularExpressions.Regex.Replace(Walker.Text(), @"End Site\s*\{", "End Site {");
        Assert.Contains("End Site {", text, StringComparison.Ordinal);
        Assert.Equal(Walker.Joints, JointMotion.FromBvh(folder.Write("ends.bvh", text)).JointNames);
    }

    [Fact]
    public void A_file_of_very_many_joints_is_read_as_fast_as_it_is_long()
    {
        const int Joints = 40_000;
        var text = new System.Text.StringBuilder("HIERARCHY\nROOT quay\n{\nOFFSET 0 0 0\nCHANNELS 3 Xrotation Yrotation Zrotation\n");
        for (var joint = 1; joint < Joints; joint++)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"JOINT bollard_{joint:00000}\n{{\nOFFSET 0 0 0\nCHANNELS 0\n}}\n");
        text.Append("}\nMOTION\nFrames: 1\nFrame Time: 0.03\n0 0 0\n");
        var path = folder.Write("quay.bvh", text.ToString());
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Assert.Equal(Joints, JointMotion.FromBvh(path).JointNames.Count);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), $"{clock.Elapsed}");
    }

    [Fact]
    public void A_file_that_ends_anywhere_is_told()
    {
        var text = Walker.Text(frames: 2).TrimEnd();
        for (var length = 0; length < text.LastIndexOf(' '); length += 3)
            Assert.Throws<BadInputException>(() => JointMotion.FromBvh(folder.Write("short.bvh", text[..length])));
        Assert.Contains("the file isn't there. Check the path.", Assert.Throws<BadInputException>(() => JointMotion.FromBvh(folder["none.bvh"])).Message, StringComparison.Ordinal);
    }

    private static double[] Columns(Affine3d world) =>
    [
        world.X.X, world.X.Y, world.X.Z, 0, world.Y.X, world.Y.Y, world.Y.Z, 0, world.Z.X, world.Z.Y, world.Z.Z, 0, world.Origin.X, world.Origin.Y, world.Origin.Z, 1,
    ];
}
