using System.Numerics;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Matching;

/// <summary>
/// A tail with many-bone IK and a spine along a curve, both with FK and a switch, on joints with random frames, under a scaled root away from the origin.
/// The seed picks the frames, how many bones there are and how they bend, and which options the solvers have.
/// </summary>
internal sealed class LongChains(int seed) : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var choices = new RandomChoices(seed);
        var pelvis = rig.Skeleton("chains").Root("pelvis", JointRole.Helper, choices.Vector(1), choices.Turn(MathF.PI), Vector3.One * (choices.Chance(0.5) ? 1 : choices.Between(0.5f, 1.5f)));
        var world = rig.Control("world").Unlock(Channels.Scale);
        var body = rig.Control("body").Under(world).PlacedAt(pelvis);
        rig.Drive(pelvis).ByChannels(body).WithScale().KeepingOffset();
        Tail(rig, Bones(rig, pelvis, "tail", choices, -Vector3.UnitZ), body, world, choices);
        Spine(rig, Bones(rig, pelvis, "spine", choices, Vector3.UnitY), body, choices);
    }

    private static void Tail(RigDraft rig, Chain tail, Control body, Control world, RandomChoices choices)
    {
        var (parts, root) = Hung(rig, "tail", tail, body);
        var ik = tail.Copy("ik").Under(parts);
        var tip = rig.Control("tip").Under(world).PlacedAt(tail.Tip);
        var solver = rig.ManyBone(ik).Reach(tip).Face(rig.Control("pole").Under(world).PlacedAt(tail.Bending(Vector3.UnitY).PolePoint(0.4f)).Lock(Channels.Turn));
        if (choices.Chance(0.2))
            solver.Within(0.001f, 20);
        Turned(rig, tail, ik, parts, root, tip.Switch("fk"));
    }

    private static void Spine(RigDraft rig, Chain spine, Control body, RandomChoices choices)
    {
        var (parts, root) = Hung(rig, "spine", spine, body);
        var laid = spine.Copy("curve").Under(parts);
        var hips = rig.Control("hips").Under(body).PlacedAt(spine.Root);
        var top = rig.Control("top").Under(choices.Chance(0.5) ? hips : body).PlacedAt(spine.Tip);
        var curve = rig.Curve(laid).Through(hips);
        if (choices.Chance(0.8))
            curve.Through(rig.Control("middle").Under(choices.Chance(0.5) ? top : body).PlacedAt(spine[spine.Count / 2]).Lock(Channels.Turn));
        curve.Through(top);
        if (choices.Chance(0.5))
            curve.Stretching(top.Switch("stretch"));
        Turned(rig, spine, laid, parts, root, top.Switch("fk"));
    }

    private static (Group Parts, Control Root) Hung(RigDraft rig, string name, Chain chain, Control body)
    {
        var root = rig.Control($"{name}_root").Under(body).PlacedAt(chain.Root);
        var parts = rig.Group($"{name}_group").PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);
        return (parts, root);
    }

    private static void Turned(RigDraft rig, Chain chain, Copy solved, Group parts, Control root, Switch amount)
    {
        var fk = chain.Copy("fk").Under(parts);
        var above = root;
        foreach (var joint in chain)
        {
            above = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(above);
        }

        rig.Blend(chain).From(solved, amount.Inverse).From(fk, amount);
    }

    /// <summary>Three to six bones of different lengths along a direction, bent beside it, with random frames.</summary>
    private static Chain Bones(RigDraft rig, Joint pelvis, string name, RandomChoices choices, Vector3 along)
    {
        var count = choices.Below(4) + 3;
        var bend = choices.Between(0.02f, 0.12f);
        var (joints, turned) = (new List<Joint>(), Quaternion.Identity);
        for (var i = 0; i <= count; i++)
        {
            var step = i == 0 ? new Vector3(0.1f, 0.2f, 0) : (along * choices.Between(0.08f, 0.2f)) + (Vector3.UnitX * (bend * (count - (2 * i) + 1) / count));
            var frame = choices.Turn(MathF.PI);
            joints.Add((i == 0 ? pelvis : joints[^1]).Child($"{name}_{i}", at: Vector3.Transform(step, Quaternion.Inverse(turned)), turned: Quaternion.Inverse(turned) * frame));
            turned = frame;
        }

        return rig.Chain(joints[0], joints[^1]);
    }
}
