using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R20;

public sealed class AnchorWindlass : IRigDefinition
{
    private const float Degree = MathF.PI / 180f;
    private const int Teeth = 6;

    public void Define(RigDraft rig)
    {
        // the windlass leans 12 degrees aft
        var lean = Quaternion.Normalize(Quaternion.CreateFromYawPitchRoll(0, -12 * Degree, 0));
        var bed = rig.Skeleton("anchor_windlass").Root("bed", at: new Vector3(0, 0.2f, 5), turned: lean);
        var drum = bed.Child("drum", at: Vector3.Transform(new(0, 0.5f, 0), Quaternion.Inverse(lean)));
        var main = rig.Control("main").PlacedAt(bed);
        var spin = rig.Control("drum_turn").Under(main).PlacedAt(drum).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        rig.Drive(bed).ByChannels(main);
        rig.Drive(drum).ByChannels(spin);

        for (int i = 0; i < Teeth; i++)
        {
            double angle = 2 * Math.PI * i / Teeth;
            var at = new Vector3(0, (float)(0.4 * Math.Cos(angle)), (float)(0.4 * Math.Sin(angle)));
            var tooth = drum.Child($"tooth{i + 1:D2}", JointRole.Helper, at, Quaternion.CreateFromAxisAngle(Vector3.UnitX, (float)angle));
            rig.Group($"tooth{i + 1:D2}_group").Under(tooth);
        }

        // chain over the bow: a catenary between the drum and the hawse pipe
        var (a, span, links) = (1.8f, 3f, 7);
        Span<Vector3> points = stackalloc Vector3[links];
        for (int i = 0; i < links; i++)
        {
            float z = span * i / (links - 1);
            points[i] = new Vector3(0, a * MathF.Cosh((z - span / 2) / a) - a * MathF.Cosh(span / 2 / a), z);
        }

        var joint = bed;
        var previous = Vector3.Zero;
        Node above = main;
        var total = 0f;
        for (int i = 0; i < links; i++)
        {
            joint = joint.Child("chain" + i, at: i == 0 ? new Vector3(0, 0.9f, 0.1f) : points[i] - previous);
            total += i == 0 ? 0 : Vector3.Distance(points[i], previous);
            previous = points[i];
            var hold = rig.Control("hold_chain" + i).Under(main).PlacedAt(joint);
            var hang = rig.Control("hang_chain" + i).Under(above).PlacedAt(joint);
            above = hang;
            var share = Math.Clamp(MathF.Round(total / span, 2), 0.1f, 0.9f);
            rig.Blend(joint).From(hold, 1 - share).From(hang, share);
        }

        // the pawl: two bars that push the brake band
        var p1 = bed.Child("pawl_base", at: new(0.5f, 0.1f, -0.3f));
        var p2 = p1.Child("pawl_knee", at: Vector3.Normalize(new Vector3(0, 2, -1)) * 0.35f);
        var p3 = p2.Child("pawl_tip", at: Vector3.Reflect(new Vector3(0, 0.3f, 0.15f), Vector3.UnitX));
        var pawl = rig.Chain(p1, p3).Bending(-Vector3.UnitZ);
        var ik = pawl.Copy("ik").Under(main);
        var goal = rig.Control("pawl_goal").Under(main).PlacedAt(p3).LimitMove(Axis.Y, -0.2f, 0.05f);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control("pawl_pole").Under(main).PlacedAt(pawl.PolePoint(MathF.Sqrt(0.25f))));
        rig.Blend(pawl).From(ik, 1f);
    }
}
