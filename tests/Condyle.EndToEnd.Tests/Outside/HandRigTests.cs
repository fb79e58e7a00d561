using Condyle.Tests.Shared;

namespace Condyle.EndToEnd.Tests.Outside;

/// <summary>
/// The way of a file that nobody here made to a rig in code: the generic hand of the package <c>@webxr-input-profiles/assets</c> 1.0.20,
/// whose joints all hang beside each other.
/// </summary>
public sealed class HandRigTests : IDisposable
{
    /// <summary>The fingers are strung by their controls, since the file's joints aren't.</summary>
    private const string Code = """
        using Condyle;
        using Condyle.Host;
        using Condyle.Runtime;

        namespace Newcomers;

        [SkeletonFile("left.glb")]
        public sealed class LeftHand : IRigDefinition
        {
            public void Define(RigDraft rig)
            {
                var joints = LeftSkeleton.In(rig);
                var hand = String(rig, rig.Control("place"), joints.Wrist);
                String(rig, hand, joints.ThumbMetacarpal, joints.ThumbPhalanxProximal, joints.ThumbPhalanxDistal, joints.ThumbTip);
                String(rig, hand, joints.IndexFingerMetacarpal, joints.IndexFingerPhalanxProximal, joints.IndexFingerPhalanxIntermediate, joints.IndexFingerPhalanxDistal);
                String(rig, hand, joints.MiddleFingerMetacarpal, joints.MiddleFingerPhalanxProximal, joints.MiddleFingerPhalanxIntermediate, joints.MiddleFingerPhalanxDistal);
            }

            private static Control String(RigDraft rig, Control above, params Joint[] joints)
            {
                foreach (var joint in joints)
                {
                    var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint).Lock(Channels.Move);
                    rig.Drive(joint).ByChannels(control);
                    above = control;
                }

                return above;
            }
        }

        public sealed class LeftHandClips : IClipsFor<LeftHand>
        {
            public IEnumerable<Clip> Clips() =>
            [
                new Clip("beckon", 1.5f)
                    .TurnAbout("turn_index-finger-phalanx-proximal", Axis.X, (0, 0), (0.5f, -70), (1.5f, 0))
                    .TurnAbout("turn_index-finger-phalanx-intermediate", Axis.X, (0, 0), (0.6f, -80), (1.5f, 0))
                    .TurnAbout("turn_wrist", Axis.Z, (0, 0), (1, 40)),
            ];
        }
        """;

    private readonly NewcomersCopy project = new();

    public void Dispose() => project.Dispose();

    /// <summary>Against gltf-validator, the validator of the standard, and three.js in Node.js. That baked is live, the program itself proves before it says so.</summary>
    [SkippableFact]
    public void A_rig_written_for_a_file_that_nobody_here_made_builds_bakes_and_validates()
    {
        var packages = OutsideChecks.LargePackages("hand", "94 MB");
        File.Copy(Path.Combine(packages, "@webxr-input-profiles", "assets", "dist", "profiles", "generic-hand", "left.glb"), project["left.glb"]);
        project.Build();
        project.Run("skeleton", "left.glb");
        project.Write("LeftHand.cs", Code);
        project.Build();
        var report = project.Run("bake", "--out", "out");
        Assert.Contains("LeftHand: no findings", report, StringComparison.Ordinal);
        Assert.Contains("beckon: 46 frames at 30/s", report, StringComparison.Ordinal);

        var written = project[Path.Combine("out", "lefthand.glb")];
        var (before, after) = (OutsideChecks.Validate(project["left.glb"]), OutsideChecks.Validate(written));
        Assert.True(after.Errors <= before.Errors && after.Warnings <= before.Warnings, string.Join(Environment.NewLine, after.Messages.Except(before.Messages)));
        AssertPlaysAlike(written, "beckon");
    }

    /// <summary>Holds three.js against a playback straight from the text of the glTF 2.0 specification: every node, every fifth frame.</summary>
    private static void AssertPlaysAlike(string file, string clip)
    {
        const double metres = 2e-5;
        var playback = DoublePlayback.Open(file);
        double[] times = [.. Enumerable.Range(0, 10).Select(frame => frame / 6.0)];
        var played = OutsideChecks.Play(file, clip, times, Enumerable.Range(0, playback.NodeCount));
        foreach (var (frame, time) in times.Index())
        {
            var worlds = playback.World(clip, time);
            Assert.All(Enumerable.Range(0, playback.NodeCount), node => Assert.All(Enumerable.Range(0, 16), i => Assert.Equal(worlds[node][i], played[frame][node][i], metres)));
        }
    }
}
