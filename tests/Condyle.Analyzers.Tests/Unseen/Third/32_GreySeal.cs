using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R32;

/// <summary>
/// A grey seal hauled out on the slip. The spine is an arc of constant curvature κ through the pelvis,
/// so that every vertebra's rest frame is the previous one rotated by θ = κ·Δs about +X.
/// </summary>
public sealed class GreySeal : IRigDefinition
{
    private const float Curvature = -0.45f;    // 1/m, negative: belly down
    private const float ArcLength = 1.6f;      // m, pelvis to skull
    private const int Vertebrae = 9;

    private static readonly Vector3 E1 = Vector3.UnitX;
    private static readonly Vector3 E3 = Vector3.UnitZ;

    public void Define(RigDraft rig)
    {
        var ds = ArcLength / (Vertebrae - 1);
        var theta = Curvature * ds;
        var q = Quaternion.CreateFromAxisAngle(E1, theta);

        var pelvis = rig.Skeleton("grey_seal").Root("pelvis", at: 0.28f * Vector3.UnitY, turned: Quaternion.CreateFromAxisAngle(E1, -Curvature * ArcLength / 2f));
        var spine = new List<Joint> { pelvis };
        for (var n = 1; n < Vertebrae; n++)
        {
            // The chord of an arc of angle θ is 2 sin(θ/2)/κ and leaves at θ/2.
            var chord = 2f * MathF.Sin(theta / 2f) / Curvature;
            var direction = Vector3.Transform(E3, Quaternion.CreateFromAxisAngle(E1, theta / 2f));
            spine.Add(spine[^1].Child($"spine_{n}", at: chord * direction, turned: q));
        }

        var skull = spine[^1].Child("skull", at: 0.12f * E3);
        var whiskers = skull.Child("muzzle", at: new Vector3(0f, -0.02f, 0.14f));

        var world = rig.Control("world");
        var above = world;
        var controls = new Dictionary<Joint, Control>();
        foreach (var joint in (IEnumerable<Joint>)[.. spine, skull, whiskers])
        {
            above = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            controls.Add(joint, above);
            rig.Drive(joint).ByChannels(above);
        }

        foreach (var side in Side.Both)
        {
            Flipper(rig, world, spine[Vertebrae - 3], controls[spine[Vertebrae - 3]], side);
            Hind(rig, pelvis, controls[pelvis], side);
        }
    }

    private static void Flipper(RigDraft rig, Control world, Joint vertebra, Control above, Side side)
    {
        var mirror = new Vector3(side.Sign, 1f, 1f);

        // An orthonormal basis from the flipper's direction by Gram and Schmidt.
        var u = Vector3.Normalize(new Vector3(0.8f, -0.5f, -0.2f) * mirror);
        var v = Vector3.Normalize(Vector3.UnitY - (Vector3.Dot(Vector3.UnitY, u) * u));
        var w = Vector3.Cross(u, v);
        var basis = new Matrix4x4(u.X, u.Y, u.Z, 0f, v.X, v.Y, v.Z, 0f, w.X, w.Y, w.Z, 0f, 0f, 0f, 0f, 1f);
        var frame = Quaternion.Normalize(Quaternion.CreateFromRotationMatrix(basis));

        var shoulder = vertebra.Child($"shoulder_{side}", at: new Vector3(0.2f, -0.08f, 0f) * mirror, turned: frame);
        var bend = Quaternion.CreateFromAxisAngle(Vector3.UnitY, 0.3f * side.Sign);
        var elbow = shoulder.Child($"elbow_{side}", at: 0.16f * Vector3.UnitX, turned: bend);
        var wrist = elbow.Child($"wrist_{side}", at: 0.14f * Vector3.UnitX);
        var tip = wrist.Child($"flipper_{side}", at: 0.12f * Vector3.UnitX);

        var limb = rig.Chain(shoulder, wrist);
        var holder = rig.Group($"flipper_{side}_group").Under(above);
        var ik = limb.Copy("ik").Under(holder);
        var fk = limb.Copy("fk").Under(holder);

        var goal = rig.Control($"paddle_{side}").Under(world).PlacedAt(wrist);
        var pole = rig.Control($"paddle_pole_{side}").Under(above).PlacedAt(limb.PolePoint(0.25f));
        rig.TwoBone(ik).Reach(goal).Face(pole);

        var parent = above;
        foreach (var joint in limb)
        {
            parent = rig.Control($"swim_{joint}").Under(parent).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(parent);
        }

        // λ ∈ [0, 1]: a partition of unity over {ik, fk}.
        var lambda = goal.Switch("fk", 0.25f);
        rig.Blend(limb).From(ik, 1f * lambda.Inverse).From(fk, lambda);

        var feather = rig.Control($"feather_{side}").Under(goal).PlacedAt(tip).LimitTurn(Axis.X, Degrees(-MathF.PI / 3f), Degrees(MathF.PI / 3f));
        rig.Drive(tip).ByChannels(feather);
    }

    private static void Hind(RigDraft rig, Joint pelvis, Control above, Side side)
    {
        var yaw = Quaternion.CreateFromYawPitchRoll(MathF.PI - (0.2f * side.Sign), 0f, 0f);
        var ankle = pelvis.Child($"hind_ankle_{side}", at: new Vector3(0.07f * side.Sign, -0.03f, -0.18f), turned: yaw);
        Span<float> spread = [-0.5f, -0.25f, 0f, 0.25f, 0.5f];
        var fan = rig.Control($"fan_{side}").Under(above).PlacedAt(ankle);
        rig.Drive(ankle).ByChannels(fan);
        for (var k = 0; k < spread.Length; k++)
        {
            var ray = Vector3.Transform(E3, Quaternion.CreateFromAxisAngle(Vector3.UnitY, spread[k]));
            var digit = ankle.Child($"hind_digit_{k}_{side}", at: 0.2f * ray);
            var control = rig.Control($"digit_{k}_{side}").Under(fan).PlacedAt(digit).Lock(Channels.Move);
            rig.Drive(digit).ByChannels(control);
        }
    }

    private static float Degrees(float radians) => radians * 180f / MathF.PI;
}
