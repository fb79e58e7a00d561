using System.Text;
using Condyle.Runtime.Tests.Baking;
using Condyle.Runtime.Tests.Clips;
using Condyle.Runtime.Tests.Gltf;

namespace Condyle.Runtime.Tests.Capture;

/// <summary>Whatever is wrong with a file of motion, it is either read or refused by the one exception; nothing else gets out.</summary>
public sealed class DamagedMotionTests : IDisposable
{
    private static readonly string[] Words = ["-1", "0", "1", "2147483647", "4294967296", "1e39", "NaN", "\"x\"", "null", "{}", "[]", "{", "}", "JOINT", "ROOT a", "End Site", "MOTION", "Frames: 1", "OFFSET", "\n", "\0", "3.5"];

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Capture_changed_at_random_is_read_or_refused()
    {
        var text = Walker.Text(frames: 3);
        var refused = 0;
        for (var seed = 0; seed < 1500; seed++)
        {
            var path = folder.Write("damaged.bvh", Damaged(text, seed));
            refused += IsRefused(() => JointMotion.FromBvh(path).Worlds(0.02f)) ? 1 : 0;
        }

        Assert.InRange(refused, 500, 1499);
    }

    [Fact]
    public void Clips_changed_at_random_are_read_or_refused()
    {
        var rig = CargoArm.Compiled();
        var file = new AnimatedFile();
        file.Track(file.Node("waist"), "rotation", "CUBICSPLINE", [0, 1], [0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0.6f, 0, 0.8f, 0, 0, 0, 0])
            .Track(file.Node("world"), "translation", "LINEAR", [0, 0.5f], [0, 0, 0, 1, 2, 3], Storage.Sparse)
            .Track(file.Node("hand_left.fk"), "translation", "STEP", [0, 1], [0, 0, 0, 1, 0, 0])
            .Pointer($"/nodes/{file.Node("hand_left")}/translation", "LINEAR", [0], [0, 0, 0]);
        var text = file.Text();
        var refused = 0;
        for (var seed = 0; seed < 600; seed++)
        {
            var path = folder.Write("damaged.gltf", Damaged(text, seed));
            refused += IsRefused(() => ClipFile.Read(path, rig)) ? 1 : 0;
        }

        Assert.InRange(refused, 200, 599);
    }

    private static string Damaged(string text, int seed)
    {
        var random = new Random(seed);
        var damaged = new StringBuilder(text);
        for (var change = random.Next(1, 4); change > 0; change--)
        {
            var at = random.Next(damaged.Length);
            switch (random.Next(4))
            {
                case 0: damaged.Insert(at, Words[random.Next(Words.Length)]); break;
                case 1: damaged.Remove(at, Math.Min(random.Next(1, 12), damaged.Length - at)); break;
                case 2: damaged[at] = (char)random.Next(1, 127); break;
                default: ReplaceNumber(damaged, at, Words[random.Next(Words.Length)]); break;
            }
        }

        return damaged.ToString();
    }

    private static void ReplaceNumber(StringBuilder text, int from, string by)
    {
        while (from < text.Length && !char.IsAsciiDigit(text[from]))
            from++;
        var end = from;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == '.'))
            end++;
        if (end > from)
            text.Remove(from, end - from).Insert(from, by);
    }

    private static bool IsRefused(Action read)
    {
        try
        {
            read();
            return false;
        }
        catch (BadInputException)
        {
            return true;
        }
    }
}
