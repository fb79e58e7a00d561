using System.Numerics;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>
/// A leg, a tail, a limited tail and a spine, each with all options, on joints with turned frames under a root away from the origin.
/// They are straight or almost so, as skeletons are often delivered: the hardest rest to hold.
/// </summary>
/// <param name="bend">From each bone to the next, in radians.</param>
internal sealed class SolverRig(float bend) : IRigDefinition
{
    public const int Bones = 5;

    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("solvers").Root("pelvis", JointRole.Helper, new(1, 2, -1), Quaternion.CreateFromYawPitchRoll(0.4f, 1.1f, -0.7f));
        var world = rig.Control("world").Unlock(Channels.Scale);
        var parts = rig.Group("parts_group").PlacedAt(pelvis);
        rig.Drive(parts).ByMatrix(world).KeepingOffset();
        rig.Drive(pelvis).ByChannels(parts);

        var leg = Limb(rig, pelvis, "leg", 2);
        var legIk = leg.Copy("ik").Under(parts);
        var foot = rig.Control("foot").Under(world).PlacedAt(leg.Tip);
        rig.TwoBone(legIk).Reach(foot).Face(rig.Control("knee_pole").Under(world).PlacedAt(legIk.PolePoint(0.5f)))
            .Stretching(foot.Switch("stretch")).Softening(0.02f).TurningPlane(rig.Angle(foot).About(Axis.Y));
        rig.Blend(leg).From(legIk, 1f);

        foreach (var name in new[] { "tail", "limited_tail" })
        {
            var tail = Limb(rig, pelvis, name, Bones);
            var tailIk = tail.Copy("ik").Under(parts);
            var tip = rig.Control($"{name}_tip").Under(world).PlacedAt(tail.Tip);
            var solver = rig.ManyBone(tailIk).Reach(tip).Face(rig.Control($"{name}_pole").Under(world).PlacedAt(tailIk.PolePoint(0.5f)));
            if (name != "tail")
                tail.SkipLast(1).Aggregate(solver, (limited, joint) => limited.Limiting(joint, 25));
            rig.Blend(tail).From(tailIk, 1f);
        }

        var spine = Limb(rig, pelvis, "spine", Bones);
        var laid = spine.Copy("curve").Under(parts);
        var curve = rig.Curve(laid);
        foreach (var at in new[] { 0, 2, Bones })
            curve.Through(rig.Control($"spine_{at}_node").Under(world).PlacedAt(spine[at]));
        curve.Stretching(foot.Switch("spine_stretch", 1));
        rig.Blend(spine).From(laid, 1f);
    }

    private Chain Limb(RigDraft rig, Joint pelvis, string name, int bones)
    {
        var joint = pelvis.Child($"{name}_0", at: new(0.1f, 0.2f, 0), turned: Quaternion.CreateFromYawPitchRoll(0.9f, 0, 2));
        var root = joint;
        for (var i = 1; i <= bones; i++)
            joint = joint.Child($"{name}_{i}", at: new(0, -0.8f / bones, 0), turned: Quaternion.CreateFromAxisAngle(Vector3.UnitX, bend));
        return rig.Chain(root, joint).Bending(new Vector3(0.3f, 1, 0.2f));
    }
}
