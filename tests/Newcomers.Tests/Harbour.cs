using System.Numerics;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;

namespace Newcomers.Tests;

/// <summary>A folder in which the program runs, and what it printed.</summary>
internal sealed class Harbour : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("condyle-newcomers-");

    public string Output { get; private set; } = "";

    public string Error { get; private set; } = "";

    public string[] FileNames => [.. folder.GetFiles("*", SearchOption.AllDirectories).Select(file => file.Name).Order(StringComparer.Ordinal)];

    public string this[string name] => Path.Combine(folder.FullName, name);

    public string Write(string name, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(this[name])!);
        File.WriteAllBytes(this[name], bytes);
        return this[name];
    }

    public int Run(params string[] arguments)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exitCode = CommandLine.Run(arguments, output, error);
        (Output, Error) = (output.ToString(), error.ToString());
        return exitCode;
    }

    public void Dispose() => folder.Delete(recursive: true);
}

/// <summary>The live rig of a file, to hold what was written against.</summary>
internal sealed class LiveNewcomer
{
    private readonly GltfSkeleton skeleton;
    private readonly CompiledRig rig;
    private readonly RigInstance instance;
    private readonly ClipPlayer player;

    public LiveNewcomer(string file)
    {
        var delivered = GltfFile.Read(file);
        skeleton = GltfSkeleton.Read(delivered);
        Newcomer = new Newcomer(delivered, skeleton);
        rig = RigCompiler.Compile(Condyle.Rig.Build(Newcomer));
        instance = rig.NewInstance();
        player = new ClipPlayer(rig, RangeOfMotion.Of(rig));
    }

    public Newcomer Newcomer { get; }

    public IReadOnlyList<int> Nodes => [.. skeleton.Joints.Select(joint => joint.Node)];

    /// <summary>Times of frames spread over the range of motion.</summary>
    public double[] Times(int count)
    {
        var rate = FrameRate.For(player.Clip, rig);
        var frames = MathF.Floor(player.Clip.Seconds * rate);
        return [.. Enumerable.Range(0, count).Select(i => (double)(float)(MathF.Floor(i * frames / count) / (double)rate))];
    }

    /// <summary>Holds the rig at rest against the delivered file's own rest.</summary>
    public void AssertRests()
    {
        instance.Reset();
        instance.Evaluate();
        foreach (var (joint, rest) in rig.Joints.Zip(skeleton.RestWorld()))
            AssertSame(rest, instance.JointWorld(joint.Index), $"'{joint.Name}' at rest");
    }

    /// <summary>Holds world matrices that another program found (16 numbers each, column after column) against the rig at a time.</summary>
    public void AssertPlays(double time, Func<int, double[]> worldOf)
    {
        player.Pose(instance, (float)time);
        instance.Evaluate();
        foreach (var (joint, delivered) in rig.Joints.Zip(skeleton.Joints))
        {
            var world = worldOf(delivered.Node);
            var matrix = new Matrix4x4();
            for (var i = 0; i < 16; i++)
                matrix[i / 4, i % 4] = (float)world[i];
            AssertSame(matrix, instance.JointWorld(joint.Index), FormattableString.Invariant($"'{joint.Name}' at {time:0.###} s"));
        }
    }

    /// <summary>Within 0.02 mm, or in proportion for what reaches further than 2 m, and within 0.002° for each axis that has a length.</summary>
    private static void AssertSame(Matrix4x4 expected, Matrix4x4 actual, string what)
    {
        var allowed = 2e-5f * MathF.Max(1, expected.Translation.Length() / 2);
        var distance = Vector3.Distance(expected.Translation, actual.Translation);
        Assert.True(distance <= allowed, FormattableString.Invariant($"{what} is {distance * 1000:0.0000} mm away"));
        for (var axis = 0; axis < 3; axis++)
        {
            var (a, b) = (Axis(expected, axis), Axis(actual, axis));
            if (a == Vector3.Zero && b == Vector3.Zero)
                continue;
            var degrees = float.RadiansToDegrees(MathF.Atan2(Vector3.Cross(a, b).Length(), Vector3.Dot(a, b)));
            Assert.True(degrees <= 0.002f, FormattableString.Invariant($"{what} is turned by {degrees:0.0000}°"));
            Assert.InRange(b.Length() / a.Length(), 0.9999f, 1.0001f);
        }
    }

    private static Vector3 Axis(Matrix4x4 matrix, int axis) => new(matrix[axis, 0], matrix[axis, 1], matrix[axis, 2]);
}
