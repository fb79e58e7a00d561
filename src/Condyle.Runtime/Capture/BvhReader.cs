using System.Globalization;
using System.Numerics;
using Condyle.Evaluation;
using Condyle.Runtime.Matching.Motions;

namespace Condyle.Runtime.Capture;

/// <summary>
/// Reads motion capture as BVH has it: offsets and channels of joints, then a line of numbers for each frame. Angles are degrees; a joint's turns are made about its own axes in the order in which its channels name them.
/// </summary>
internal static class BvhReader
{
    /// <summary>The least that a number takes in a file: a digit, and what parts it from the next.</summary>
    private const int LeastBytes = 2;

    /// <exception cref="BadInputException">The file can't be read; the message names the line.</exception>
    public static JointMotion Read(string path, Axis up)
    {
        if (up is not (Axis.Y or Axis.Z))
            throw new ArgumentOutOfRangeException(nameof(up), up, "Up is Y or Z.");
        var bytes = AllBytes(path);
        var text = new BvhText(path, bytes.AsSpan().StartsWith("\uFEFF"u8) ? bytes.AsSpan(3) : bytes);
        var joints = BvhSkeleton.Take(ref text);
        var (frames, seconds) = TakeHead(ref text, joints.Sum(joint => joint.Channels.Count));
        var tracks = joints.ConvertAll(joint => new BvhTracks(joint));
        for (var frame = 0; frame < frames; frame++)
            TakeFrame(ref text, tracks, frame, frames, (float)(frame * (double)seconds));
        if (text.TryTake(out _))
            throw text.Wrong($"there are more lines than the {frames} frames that the file claims", "Export or copy the file again");
        return new JointMotion(path, Path.GetFileNameWithoutExtension(path), (float)((frames - 1) * (double)seconds), 1 / seconds, Joints(joints, tracks, up), LowestOf(joints, up));
    }

    private static (int Frames, float Seconds) TakeHead(ref BvhText text, int numbers)
    {
        if (numbers == 0)
            throw text.Wrong("no joint has a channel, so nothing moves", "Export the file again");
        var line = text.Take("Frames:");
        if (!BvhText.Is(BvhText.Word(ref line), "Frames:"u8))
            throw text.Wrong("'Frames:' is missing", "Export the file again");
        var frames = text.Whole(ref line, "the number of frames", int.MaxValue);
        if (frames == 0)
            throw text.Wrong("there are no frames", "Export the file again");
        line = text.Take("Frame Time:");
        if (!BvhText.Is(BvhText.Word(ref line), "Frame"u8) || !BvhText.Is(BvhText.Word(ref line), "Time:"u8))
            throw text.Wrong("'Frame Time:' is missing", "Export the file again");
        var seconds = text.Number(ref line, "the time of a frame");
        if (!(seconds > 0) || !float.IsFinite((float)(seconds * (double)frames)))
            throw text.Wrong(string.Create(CultureInfo.InvariantCulture, $"a frame lasts {seconds} s"), "Write a time above zero");
        return frames * numbers * LeastBytes <= text.Left + 1L
            ? ((int)frames, seconds)
            : throw text.Wrong($"the file claims {frames} frames of {numbers} numbers, more than its {text.Left} bytes of frames can hold", "Export or copy the file again");
    }

    private static void TakeFrame(ref BvhText text, List<BvhTracks> tracks, int frame, int frames, float at)
    {
        if (!text.TryTake(out var line))
            throw text.Wrong($"the file claims {frames} frames, and there are {frame}", "Export or copy the file again");
        Span<float> values = stackalloc float[6];
        foreach (var track in tracks)
        {
            var count = track.Joint.Channels.Count;
            for (var channel = 0; channel < count; channel++)
                values[channel] = text.Place(ref line, $"number {track.Joint.FirstNumber + channel + 1} of frame {frame}");
            track.Add(at, values[..count]);
        }

        if (!line.IsEmpty)
            throw text.Wrong($"frame {frame} has more numbers than the joints have channels", "Export the file again");
    }

    /// <summary>How low the skeleton reaches at rest.</summary>
    private static double LowestOf(List<BvhJoint> joints, Axis up)
    {
        var heights = new List<double>();
        foreach (var joint in joints)
            heights.Add((joint.Parent < 0 ? 0 : heights[joint.Parent]) + joint.Offset[(int)up]);
        return joints.Zip(heights, (joint, height) => height + Math.Min(0, joint.Ends.Select(end => end[(int)up]).DefaultIfEmpty(0).Min())).Min();
    }

    private static List<SourceJoint> Joints(List<BvhJoint> joints, List<BvhTracks> tracks, Axis up)
    {
        // Z up lies down by a quarter turn about X, and everything hangs below that.
        var isTurned = up == Axis.Z;
        var read = new List<SourceJoint>();
        if (isTurned)
            read.Add(new SourceJoint("", -1, new Trs(Vector3d.Zero, Quaterniond.About(Vector3d.UnitX, -Math.PI / 2), Vector3d.One), null, null));
        var shift = read.Count;
        foreach (var (joint, track) in joints.Zip(tracks))
            read.Add(new SourceJoint(joint.Name, joint.Parent < 0 ? shift - 1 : joint.Parent + shift, new Trs(joint.Offset, Quaterniond.Identity, Vector3d.One), track.Moves, track.Turns));
        return read;
    }

    private static byte[] AllBytes(string path)
    {
        try
        {
            return File.ReadAllBytes(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            var missing = problem is FileNotFoundException or DirectoryNotFoundException;
            throw new BadInputException(path, missing ? "the file isn't there" : $"the file can't be read: {problem.Message.TrimEnd('.')}", missing ? "Check the path" : "Check the path and its permissions", inner: problem);
        }
    }
}

/// <summary>
/// The keys of one joint, frame by frame. Moves of a root come on top of its offset (Meredith and Maddock, "Motion Capture File Formats Explained", 2001); those of other joints take its place, as programs mean it
/// that write moves for every joint.
/// </summary>
internal sealed class BvhTracks(BvhJoint joint)
{
    public BvhJoint Joint => joint;

    public VectorTrack? Moves { get; } = joint.Channels.Any(channel => channel < 3) ? new VectorTrack() : null;

    public TurnTrack? Turns { get; } = joint.Channels.Any(channel => channel >= 3) ? new TurnTrack() : null;

    public void Add(float at, ReadOnlySpan<float> values)
    {
        var (move, turn) = (joint.Offset, Quaternion.Identity);
        for (var i = 0; i < values.Length; i++)
        {
            var channel = joint.Channels[i];
            if (channel < 3)
                move[channel] = values[i] + (joint.Parent < 0 ? joint.Offset[channel] : 0);
            else
                turn *= Runtime.Turns.About((Axis)(channel - 3), values[i]);
        }

        Moves?.TryAdd(at, move, Channels.None);
        Turns?.TryAdd(at, Quaternion.Normalize(turn), Channels.None);
    }
}
