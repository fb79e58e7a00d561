using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R33;

public sealed class MooringRope : IRigDefinition
{
    private const int Links = 9;

    public void Define(RigDraft rig)
    {
        var joints = new List<Joint>(Strand(rig.Skeleton("rope").Root("rope_0", at: new Vector3(0, 1.2f, 0)), 1));
        var systems = rig.Group("systems_group");
        var world = rig.Control("world");
        var bollard = rig.Control("bollard").Under(world).PlacedAt(joints[0]);
        var ship = rig.Control("ship").Under(world).PlacedAt(joints[^1]);
        var slack = ship.Switch("slack", 0.3f).AlsoOn(bollard);

        Hang(0, joints.Count - 1, bollard, ship, 0);

        foreach (var (control, joint) in Handles(rig, joints, systems))
            rig.Drive(joint).ByChannels(control);

        // halve the rope again and again: the joint in the middle lies between its two ends
        void Hang(int from, int to, Node left, Node right, int depth)
        {
            if (to - from < 2)
                return;
            var middle = (from + to) / 2;
            var sag = rig.Group($"sag_{middle}_group").Under(systems).PlacedAt(joints[middle]);
            if (depth == 0)
                rig.Blend(sag).From(left, slack.Inverse).From(right, slack);
            else
                rig.Blend(sag).From(left, 0.5f).From(right, 0.5f);
            Hang(from, middle, left, sag, depth + 1);
            Hang(middle, to, sag, right, depth + 1);
        }
    }

    private static IEnumerable<Joint> Strand(Joint above, int number)
    {
        yield return above;
        if (number >= Links)
            yield break;
        var drop = number < Links / 2 ? -0.1f : 0.1f;
        foreach (var below in Strand(above.Child($"rope_{number}", at: new Vector3(0, drop, 0.5f)), number + 1))
            yield return below;
    }

    private static IEnumerable<(Control, Joint)> Handles(RigDraft rig, IReadOnlyList<Joint> joints, Group systems)
    {
        for (var i = 0; i < joints.Count; i++)
        {
            var control = rig.Control($"nudge_{i}").Under(systems).PlacedAt(joints[i]);
            if (i is 0 or Links - 1)
                control.Lock(Channels.Move);
            yield return (control, joints[i]);
        }
    }
}
