using System.Reflection;
using Condyle.Host;
using Condyle.Runtime;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Skeletons;

/// <summary>The dock worker's rig, word for word, on other skeletons than the one that it was written on.</summary>
public sealed class ChangedSkeletonTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("changed-");

    public void Dispose() => folder.Delete(recursive: true);

    /// <summary>Played back straight from the text of the glTF 2.0 specification, appendix C.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_rig_rests_as_delivered_and_what_is_baked_is_the_live_motion(int seed)
    {
        var assembly = CompiledCode.Load(SampleProject.Compile("Quayside", gltf => ChangedSkeleton.Of(gltf, seed)));
        var rig = RigCompiler.Compile(Rig.Build(Make<IRigDefinition>(assembly, "Quayside.Stevedore")));
        var clip = Make<IRigClips>(assembly, "Quayside.Clips.StevedoreClips").Clips().Single(clip => clip.Name == "lift_crate");
        var (delivered, written) = (Deliver(seed), Path.Combine(folder.FullName, "out.glb"));

        var result = RigBaker.Run(rig, delivered, [clip], written);

        Assert.Empty(result.Rest.Moved);
        Assert.InRange(result.Rest.Largest.Metres.Value, 0, 1e-5);
        Assert.True(result.Holds);
        var (playback, live, player) = (DoublePlayback.Open(written), rig.NewInstance(), new ClipPlayer(rig, clip));
        for (var frame = 0; frame <= 120; frame++)
        {
            player.Pose(live, frame / 30f);
            live.Evaluate();
            var worlds = playback.World(clip.Name, frame / 30f);
            foreach (var joint in rig.Joints)
            {
                var (there, here) = (worlds[playback.NodeNamed(joint.Name)], live.JointWorld(joint.Index));
                for (var i = 0; i < 16; i++)
                    Assert.True(Math.Abs(there[i] - here[i / 4, i % 4]) < 2e-5, $"'{joint.Name}' is elsewhere in frame {frame}");
            }
        }
    }

    private string Deliver(int seed)
    {
        foreach (var file in Directory.GetFiles(SampleProject.Folder("Quayside"), "*.bin"))
            File.Copy(file, Path.Combine(folder.FullName, Path.GetFileName(file)));
        var delivered = Path.Combine(folder.FullName, "stevedore.gltf");
        File.WriteAllText(delivered, ChangedSkeleton.Of(File.ReadAllText(Path.Combine(SampleProject.Folder("Quayside"), "stevedore.gltf")), seed));
        return delivered;
    }

    private static T Make<T>(Assembly assembly, string type) => (T)Activator.CreateInstance(assembly.GetType(type, throwOnError: true)!)!;
}
