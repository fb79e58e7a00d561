using System.Numerics;

namespace Condyle.Runtime.Capture;

/// <summary>A joint of a BVH file: where it hangs, and what its numbers in a frame are, in their order: 0 to 2 are moves along X, Y, Z, 3 to 5 turns about them.</summary>
internal sealed record BvhJoint(string Name, int Parent, Vector3 Offset, IReadOnlyList<int> Channels, int FirstNumber)
{
    /// <summary>The offsets of the ends that hang below it.</summary>
    public List<Vector3> Ends { get; } = [];
}

/// <summary>Reads the HIERARCHY of a BVH file.</summary>
internal static class BvhSkeleton
{
    /// <summary>Far beyond any skeleton.</summary>
    private const int MostLevels = 1000;

    private static readonly string[] Names = ["Xposition", "Yposition", "Zposition", "Xrotation", "Yrotation", "Zrotation"];

    /// <summary>Takes the lines up to and with the word MOTION.</summary>
    public static List<BvhJoint> Take(ref BvhText text)
    {
        var line = text.Take("HIERARCHY");
        if (!BvhText.Is(line, "HIERARCHY"u8))
            throw text.Wrong("the file doesn't begin with HIERARCHY, so it is no BVH file", "Name a BVH file");
        var (joints, names, numbers) = (new List<BvhJoint>(), new HashSet<string>(StringComparer.Ordinal), 0);
        while (true)
        {
            line = text.Take("ROOT or MOTION");
            var word = BvhText.Word(ref line);
            if (BvhText.Is(word, "MOTION"u8))
                break;
            if (!BvhText.Is(word, "ROOT"u8))
                throw text.Wrong($"there is '{BvhText.Shown(word)}' where ROOT or MOTION should stand", "Export the file again");
            TakeTree(ref text, line, joints, names, ref numbers);
        }

        if (joints.Count == 0)
            throw text.Wrong("the hierarchy has no joint", "Export the file again");
        return joints;
    }

    private static void TakeTree(ref BvhText text, ReadOnlySpan<byte> name, List<BvhJoint> joints, HashSet<string> names, ref int numbers)
    {
        // The joints that are open, from the root down; an end site is no joint.
        const int EndSite = -1;
        var open = new Stack<int>();
        open.Push(TakeJoint(ref text, name, parent: -1, joints, names, ref numbers));
        while (open.Count > 0)
        {
            var line = text.Take("a joint or '}'");
            var word = BvhText.Word(ref line);
            if (BvhText.Is(word, "}"u8))
            {
                open.Pop();
                continue;
            }

            if (open.Peek() == EndSite)
                throw text.Wrong($"there is '{BvhText.Shown(word)}' in an end site", "An end site has an OFFSET and nothing else");
            if (open.Count == MostLevels)
                throw text.Wrong($"the joints lie more than {MostLevels} levels deep", "Flatten the hierarchy");
            if (BvhText.Is(word, "JOINT"u8))
            {
                open.Push(TakeJoint(ref text, line, open.Peek(), joints, names, ref numbers));
            }
            else if (BvhText.Is(word, "End"u8))
            {
                if (!line.EndsWith("{"u8))
                    TakeBrace(ref text);
                joints[open.Peek()].Ends.Add(TakeOffset(ref text, "an end site"));
                open.Push(EndSite);
            }
            else
            {
                throw text.Wrong($"there is '{BvhText.Shown(word)}' where JOINT, End Site or '}}' should stand", "Export the file again");
            }
        }
    }

    private static int TakeJoint(ref BvhText text, ReadOnlySpan<byte> line, int parent, List<BvhJoint> joints, HashSet<string> names, ref int numbers)
    {
        var braceStandsHere = line.EndsWith("{"u8);
        var name = System.Text.Encoding.UTF8.GetString((braceStandsHere ? line[..^1] : line).Trim(" \t"u8));
        if (name.Length == 0)
            throw text.Wrong("a joint has no name", "Name it");
        if (!names.Add(name))
            throw text.Wrong("is the name of two joints", "Give each joint its own name", name);
        if (!braceStandsHere)
            TakeBrace(ref text);
        var offset = TakeOffset(ref text, $"'{name}'");
        var channels = TakeChannels(ref text, name);
        joints.Add(new BvhJoint(name, parent, offset, channels, numbers));
        numbers += channels.Count;
        return joints.Count - 1;
    }

    private static void TakeBrace(ref BvhText text)
    {
        if (!BvhText.Is(text.Take("'{'"), "{"u8))
            throw text.Wrong("a '{' is missing", "Export the file again");
    }

    private static Vector3 TakeOffset(ref BvhText text, string whose)
    {
        var line = text.Take($"the OFFSET of {whose}");
        if (!BvhText.Is(BvhText.Word(ref line), "OFFSET"u8))
            throw text.Wrong($"the OFFSET of {whose} is missing", "Export the file again");
        return new Vector3(text.Place(ref line, $"the offset of {whose} along X"), text.Place(ref line, $"the offset of {whose} along Y"), text.Place(ref line, $"the offset of {whose} along Z"));
    }

    private static List<int> TakeChannels(ref BvhText text, string name)
    {
        var line = text.Take($"the CHANNELS of '{name}'");
        if (!BvhText.Is(BvhText.Word(ref line), "CHANNELS"u8))
            throw text.Wrong("has no CHANNELS", "Export the file again", name);
        var count = text.Whole(ref line, "the number of channels", Names.Length);
        var channels = new List<int>();
        while (BvhText.Word(ref line) is { IsEmpty: false } word)
        {
            var shown = BvhText.Shown(word);
            var channel = Array.FindIndex(Names, known => known.Equals(shown, StringComparison.OrdinalIgnoreCase));
            if (channel < 0 || channels.Contains(channel))
                throw text.Wrong(channel < 0 ? $"has a channel '{shown}'" : $"has the channel '{shown}' twice", $"The channels are {string.Join(", ", Names)}", name);
            channels.Add(channel);
        }

        return channels.Count == count ? channels : throw text.Wrong($"claims {count} channels and names {channels.Count}", "Export the file again", name);
    }
}
