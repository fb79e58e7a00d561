using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R13;

public sealed class Lobster : IRigDefinition
{
    private sealed record Segment(int Order, string Name, string? Above, float Y, float Z);

    private sealed record Appendage(string Name, string On, int Bones, float X, float Y, float Z, bool Walks);

    private static readonly Segment[] Segments =
    [
        new(0, "carapace", null, 0.12f, 0f),
        new(1, "abdomen_1", "carapace", 0.01f, -0.08f),
        new(2, "abdomen_2", "abdomen_1", -0.005f, -0.05f),
        new(3, "abdomen_3", "abdomen_2", -0.01f, -0.05f),
        new(4, "abdomen_4", "abdomen_3", -0.01f, -0.045f),
        new(5, "abdomen_5", "abdomen_4", -0.01f, -0.04f),
        new(6, "telson", "abdomen_5", -0.01f, -0.04f),
        new(7, "rostrum", "carapace", 0.02f, 0.1f),
    ];

    private static readonly Appendage[] Appendages =
    [
        new("claw", "carapace", 3, 0.07f, 0.02f, 0.08f, true),
        new("leg_1", "carapace", 3, 0.06f, 0.03f, 0.04f, true),
        new("leg_2", "carapace", 3, 0.06f, 0.03f, 0.01f, true),
        new("leg_3", "carapace", 3, 0.06f, 0.03f, -0.02f, true),
        new("leg_4", "carapace", 3, 0.055f, 0.03f, -0.05f, true),
        new("antenna", "rostrum", 6, 0.015f, 0.01f, 0.05f, false),
        new("antennule", "rostrum", 3, 0.008f, 0.01f, 0.03f, false),
        new("uropod", "telson", 2, 0.02f, 0f, -0.03f, false),
    ];

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("lobster");
        var shell = new Dictionary<string, Joint>();
        foreach (var s in from segment in Segments orderby segment.Order select segment)
        {
            var at = new Vector3(0, s.Y, s.Z);
            shell.Add(s.Name, s.Above is null ? skeleton.Root(s.Name, at: at) : shell[s.Above].Child(s.Name, at: at));
        }

        var world = rig.Control("world");
        var handles = new Dictionary<string, Control>();
        var hung =
            from s in Segments
            orderby s.Order
            let joint = shell[s.Name]
            let above = s.Above is null ? world : handles[s.Above]
            let control = rig.Control($"{s.Name}_turn").Under(above).PlacedAt(joint)
            select (s.Name, joint, control);
        foreach (var (name, joint, control) in hung)
        {
            rig.Drive(joint).ByChannels(control);
            handles.Add(name, control);
        }

        var limbs = (
            from a in Appendages
            join s in Segments on a.On equals s.Name
            from side in Side.Both
            select (a, side, bones: Bones(shell[s.Name], a, side), above: handles[s.Name])).ToList();

        var byUse =
            from limb in limbs
            group limb by limb.a.Walks into use
            orderby use.Key descending
            select use;

        var systems = rig.Group("systems_group");
        foreach (var use in byUse)
        {
            if (use.Key)
            {
                var solved =
                    from limb in use
                    let name = $"{limb.a.Name}_{limb.side}"
                    let chain = rig.Chain(limb.bones[0], limb.bones[2])
                    let holder = rig.Group($"{name}_group").Under(systems).PlacedAt(chain.Root)
                    let ik = chain.Copy("ik").Under(holder)
                    let fk = chain.Copy("fk").Under(holder)
                    let goal = rig.Control($"{name}_goal").Under(world).PlacedAt(chain.Tip)
                    let pole = rig.Control($"{name}_pole").Under(limb.above).PlacedAt(ik.PolePoint(0.1f))
                    let carried = rig.Drive(holder).ByMatrix(limb.above).KeepingOffset()
                    let solver = rig.TwoBone(ik).Reach(goal).Face(pole)
                    let amount = goal.Switch("fk")
                    let blend = rig.Blend(chain).From(ik, amount.Inverse).From(fk, amount)
                    select (limb.above, chain, fk, goal, amount);

                foreach (var limb in solved.ToList())
                {
                    var turns =
                        from joint in limb.chain
                        select (joint, turn: rig.Control($"fk_{joint}").PlacedAt(joint).Lock(Channels.Move));
                    Node above = limb.above;
                    foreach (var (joint, turn) in turns)
                    {
                        turn.Under(above);
                        rig.Drive(limb.fk.Of(joint)).ByChannels(turn);
                        above = turn;
                    }

                    rig.Label($"fk_{limb.goal}_label", "FK").Under(limb.goal).ShownBy(limb.amount);
                }
            }
            else
            {
                var drives =
                    from limb in use
                    from index in Enumerable.Range(0, limb.bones.Count)
                    let joint = limb.bones[index]
                    let control = rig.Control($"{joint}_bend").Under(index == 0 ? limb.above : limb.bones[index - 1]).PlacedAt(joint)
                    where joint.Name.Length > 0
                    select rig.Drive(joint).ByChannels(control);
                _ = drives.Count();
            }
        }

        var thumbs =
            from limb in limbs
            where limb.a.Name is "claw"
            let tip = limb.bones[^1]
            let thumb = tip.Child($"claw_thumb_{limb.side}", at: new Vector3(0.01f * limb.side.Sign, 0.01f, 0.03f))
            let pinch = rig.Control($"pinch_{limb.side}").Under(tip).PlacedAt(thumb).LimitTurn(Axis.Y, -40, 10)
            select rig.Drive(thumb).ByChannels(pinch);
        thumbs.ToArray();
    }

    private static List<Joint> Bones(Joint on, Appendage a, Side side)
    {
        var offsets =
            from i in Enumerable.Range(0, a.Bones)
            let bow = i == 1 ? 1f : -0.8f
            select i == 0
                ? new Vector3(a.X * side.Sign, -0.01f, a.Z)
                : new Vector3(a.X * side.Sign, a.Y * bow, a.Walks ? 0.01f : a.Z);
        var made = new List<Joint>();
        foreach (var offset in offsets)
        {
            on = on.Child($"{a.Name}_{made.Count + 1}_{side}", at: offset);
            made.Add(on);
        }

        return made;
    }
}
