using Condyle.Runtime;
using Condyle.Runtime.Baking;
using Quayside;

namespace Condyle.Benchmarks.Motion;

/// <summary>The dock worker's range of motion at such a rate that it has so many frames, and the ways to bake it.</summary>
internal sealed class LongClip
{
    private readonly RigBaker baker;

    public LongClip(int frames)
    {
        Rig = RigCompiler.Compile(Condyle.Rig.Build(new Stevedore()));
        var clip = RangeOfMotion.Of(Rig);
        Settings = new BakeSettings { FramesPerSecond = frames / clip.Seconds };
        Player = new ClipPlayer(Rig, clip);
        baker = RigBaker.Prepare(Rig, Path.Combine(AppContext.BaseDirectory, "stevedore.gltf"), [clip], Settings);
        Times = FrameTimes.Of(clip, Settings);
        Frames = Times.Times.Length;
    }

    public CompiledRig Rig { get; }

    public ClipPlayer Player { get; }

    public BakeSettings Settings { get; }

    public FrameTimes Times { get; }

    public int Frames { get; }

    public string Delivered => baker.Delivered.Path;

    /// <summary>Every frame posed and evaluated, and no more.</summary>
    public void Evaluate() => new LiveMotion(Player, null, 0, default).Play(Times.Times.Select(time => (double)time), static (_, _) => { });

    /// <summary>Evaluated, sampled and written, without the proof that the result is the live motion.</summary>
    public void BakeWithoutProof(string output)
    {
        var live = new LiveMotion(Player, null, 0, default);
        var samples = new JointSampler(live, baker.Match.Rest, loops: false, new BakeWork("", null)).Sample(Times);
        var baked = new BakedClip(Player.Clip.Name, Times.Times, samples.Tracks, null!);
        baker.Delivered.Append([baker.Match.ToGltf(baked)]).Write(output);
    }

    /// <summary>The same with the proof.</summary>
    public void Bake(string output) => baker.Write(output);
}
