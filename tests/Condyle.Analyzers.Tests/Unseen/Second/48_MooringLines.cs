using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R48;

/// <summary>
/// The mooring lines of a moored coaster: fairleads on board, bollards on the quay. Each line goes to the nearest free bollard, longest lines
/// first, and what lies between is filled with rope joints, at most two metres apart.
/// </summary>
public sealed class MooringLines : IRigDefinition
{
    private const int MostPerBollard = 2;
    private const float Pitch = 2f;

    private static readonly SortedList<string, Vector3> Fairleads = new()
    {
        { "stern_line", new Vector3(2, 3, -21) },
        { "bow_line", new Vector3(2, 3.5f, 20) },
        { "fore_spring", new Vector3(3, 2.8f, 12) },
        { "aft_spring", new Vector3(3, 2.6f, -10) },
        { "breast_line", new Vector3(3, 2.8f, 4) },
    };

    private static readonly LinkedList<Vector3> Bollards = new(Enumerable.Range(-2, 5).Select(place => new Vector3(6, 1, place * 13 + (place > 0 ? 1 : 0))));

    public void Define(RigDraft rig)
    {
        var ship = rig.Skeleton("mooring_lines").Root("deck", JointRole.Helper);
        var heave = rig.Control("heave").PlacedAt(ship).LimitMove(Axis.Y, -1, 1);
        rig.Drive(ship).ByChannels(heave);

        var free = new Dictionary<LinkedListNode<Vector3>, int>();
        for (var node = Bollards.First; node is not null; node = node.Next)
            free[node] = MostPerBollard;

        var work = new PriorityQueue<string, float>();
        foreach (var (line, from) in Fairleads)
            work.Enqueue(line, -Nearest(from, free).Distance);

        var used = new SortedSet<int>();
        var lines = 0;
        while (work.TryDequeue(out var line, out var priority))
        {
            var from = Fairleads[line];
            var (bollard, distance) = Nearest(from, free);
            if (bollard is null)
                break;
            if (-distance < priority)
            {
                // Its bollard was taken meanwhile: it is a longer line now and waits for its turn.
                work.Enqueue(line, -distance);
                continue;
            }

            if (--free[bollard] == 0)
                free.Remove(bollard);
            used.Add(Index(bollard));
            Line(rig, ship, heave, line, from, bollard.Value, Index(bollard));
            lines++;
        }

        var spare = free.Where(entry => entry.Value == MostPerBollard).Select(entry => Index(entry.Key)).Except(used).OrderDescending();
        rig.Group($"lines_{lines}_spare_{string.Join("", spare)}_group");
    }

    private static void Line(RigDraft rig, Joint ship, Control heave, string name, Vector3 from, Vector3 to, int bollard)
    {
        var eye = rig.Control($"{name}_eye").Lock(Channels.Turn);
        var pieces = Pieces(from, to).ToArray();
        var above = ship;
        var joints = new List<Joint>(pieces.Length);
        foreach (var (piece, index) in pieces.Select((piece, index) => (piece, index)))
            joints.Add(above = above.Child($"{name}_{index}", index == pieces.Length - 1 ? JointRole.Helper : JointRole.Deform, piece));
        eye.PlacedAt(joints[^1]);

        var tight = eye.Switch("tight", atRest: 1);
        for (var i = 0; i < joints.Count; i++)
        {
            var share = (float)i / (joints.Count - 1);
            var aboard = rig.Group($"{joints[i]}_aboard_group").Under(heave).PlacedAt(joints[i]);
            var ashore = rig.Group($"{joints[i]}_ashore_group").Under(eye).PlacedAt(joints[i]);
            switch (i)
            {
                case 0:
                    rig.Drive(joints[i]).ByChannels(aboard);
                    break;
                case var last when last == joints.Count - 1:
                    rig.Drive(joints[i]).ByMatrix(ashore);
                    break;
                default:
                    rig.Blend(joints[i]).From(ashore, share * tight).From(aboard, (share * tight).Inverse);
                    break;
            }
        }

        rig.Label($"{name}_label", $"bollard {bollard}").Under(eye).ShownBy(tight);
    }

    private static IEnumerable<Vector3> Pieces(Vector3 from, Vector3 to)
    {
        yield return from;
        var left = to - from;
        while (left.Length() > Pitch)
        {
            var step = Vector3.Normalize(left) * Pitch;
            left -= step;
            yield return step;
        }

        yield return left;
    }

    private static (LinkedListNode<Vector3>? Bollard, float Distance) Nearest(Vector3 from, Dictionary<LinkedListNode<Vector3>, int> free)
    {
        var best = (Bollard: (LinkedListNode<Vector3>?)null, Distance: float.MaxValue);
        for (var node = Bollards.First; node != null; node = node.Next)
        {
            if (!free.ContainsKey(node))
                continue;
            var distance = Vector3.Distance(from, node.Value);
            if (distance < best.Distance)
                best = (node, distance);
        }

        return best;
    }

    private static int Index(LinkedListNode<Vector3> node)
    {
        var index = 0;
        while (node.Previous is { } before)
        {
            index++;
            node = before;
        }

        return index;
    }
}
