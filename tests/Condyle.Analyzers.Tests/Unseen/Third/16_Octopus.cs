using System;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R16;

/// <summary>
/// Octopus vulgaris, after our own measurements of eleven animals of the inner harbour.
/// Arms follow r(s) = L(1 - exp(-ks)) / k from the beak; every value below is the median, in SI units.
/// </summary>
public sealed class Octopus : IRigDefinition
{
    private const int Arms = 8;
    private const int SegmentsPerArm = 12;
    private const float MantleLength = 0.145f;
    private const float ArmToMantle = 3.4f;

    private readonly record struct Metres(float Value)
    {
        public static Metres operator *(float factor, Metres length) => new(factor * length.Value);

        public static Metres operator +(Metres a, Metres b) => new(a.Value + b.Value);

        public static implicit operator float(Metres length) => length.Value;
    }

    private readonly record struct Radians(float Value)
    {
        public static Radians OfDegrees(float degrees) => new(degrees * MathF.PI / 180f);

        public float Degrees => Value * 180f / MathF.PI;

        public (float Sin, float Cos) SinCos => MathF.SinCos(Value);
    }

    private readonly struct Frame
    {
        public readonly Vector3 Origin;
        public readonly Quaternion Turn;

        public Frame(Vector3 origin, Quaternion turn)
        {
            Origin = origin;
            Turn = Quaternion.Normalize(turn);
        }

        public static Frame Identity => new(Vector3.Zero, Quaternion.Identity);

        // this = above * result
        public readonly Frame RelativeTo(in Frame above)
        {
            var inverse = Quaternion.Conjugate(above.Turn);
            return new Frame(Vector3.Transform(Origin - above.Origin, inverse), inverse * Turn);
        }
    }

    /// <summary>A tapering arm that leaves the body radially, dips and lifts again at its tip.</summary>
    private readonly struct ArmCurve(Radians azimuth, Metres length, float taper)
    {
        public Frame At(float s)
        {
            var reach = length * (1f - MathF.Exp(-taper * s)) / (1f - MathF.Exp(-taper));
            var dip = -0.12f * length * MathF.Sin(MathF.PI * s);
            var (sin, cos) = azimuth.SinCos;
            var slope = MathF.Atan(0.12f * MathF.PI * MathF.Cos(MathF.PI * s));
            var heading = Quaternion.CreateFromAxisAngle(Vector3.UnitY, azimuth.Value);
            var pitch = Quaternion.CreateFromAxisAngle(Vector3.UnitX, slope);
            return new Frame(new Vector3(sin * reach, dip, cos * reach), heading * pitch);
        }

        public float RadiusAt(float s) => 0.04f * length * MathF.Exp(-taper * s);
    }

    public void Define(RigDraft rig)
    {
        var mantleLength = new Metres(MantleLength);
        var beak = rig.Skeleton("octopus").Root("beak", JointRole.Helper, at: new Vector3(0, 0.06f, 0));
        var mantle = beak.Child("mantle", at: new Vector3(0, 0.25f * mantleLength, -0.2f * mantleLength));
        var crown = mantle.Child("mantle_tip", at: new Vector3(0, 0.5f * mantleLength, -0.85f * mantleLength));
        var siphon = mantle.Child("siphon", at: new Vector3(0.02f, -0.01f, 0.01f));

        var world = rig.Control("world");
        var body = rig.Control("body").Under(world).PlacedAt(beak);
        var breathe = rig.Control("breathe").Under(body).PlacedAt(mantle).Unlock(Channels.Scale);
        var point = rig.Control("siphon_aim").Under(breathe).PlacedAt(siphon).Lock(Channels.Move);
        var trail = rig.Control("mantle_trail").Under(breathe).PlacedAt(crown);
        rig.Drive(beak).ByChannels(body);
        rig.Drive(mantle).ByChannels(breathe).WithScale();
        rig.Drive(crown).ByChannels(trail);
        rig.Drive(siphon).ByChannels(point);

        Span<float> deviation = [0.02f, -0.01f, 0.03f, 0f, -0.02f, 0.01f, 0f, -0.03f];
        for (var arm = 0; arm < Arms; arm++)
        {
            var azimuth = new Radians(MathF.Tau * (arm + 0.5f) / Arms);
            var length = (1f + deviation[arm]) * (ArmToMantle * mantleLength);
            BuildArm(rig, beak, body, world, arm, new ArmCurve(azimuth, length, taper: 1.1f));
        }
    }

    private static void BuildArm(RigDraft rig, Joint beak, Control body, Control world, int arm, in ArmCurve curve)
    {
        Span<Frame> frames = stackalloc Frame[SegmentsPerArm + 1];
        frames[0] = Frame.Identity;
        var joints = new Joint[SegmentsPerArm];
        for (var i = 0; i < SegmentsPerArm; i++)
        {
            frames[i + 1] = curve.At((i + 1f) / SegmentsPerArm);
            var local = frames[i + 1].RelativeTo(frames[i]);
            joints[i] = (i == 0 ? beak : joints[i - 1]).Child($"arm_{arm}_{i:00}", JointRole.Deform, local.Origin, local.Turn);
        }

        var chain = rig.Chain(joints[0], joints[^1]);
        var holder = rig.Group($"arm_{arm}_group").Under(body).PlacedAt(chain.Root);
        var curl = chain.Copy("curl").Under(holder);
        var reach = chain.Copy("reach").Under(holder);

        // Curl: the same bend at each joint, in local coordinates.
        Node above = body;
        for (var i = 0; i < SegmentsPerArm; i++)
        {
            var most = MathF.Min(60f, new Radians(0.02f / curve.RadiusAt(i / (float)SegmentsPerArm)).Degrees);
            var control = rig.Control($"curl_{arm}_{i:00}").Under(above).PlacedAt(joints[i]).Lock(Channels.Move).LimitTurn(Axis.X, -most, most);
            rig.Drive(curl.Of(joints[i])).ByChannels(control);
            above = control;
        }

        // Reach: weights of a quadratic Bernstein basis over root, middle and sucker tip.
        var middle = rig.Control($"reach_{arm}_middle").Under(world).PlacedAt(joints[SegmentsPerArm / 2]);
        var tip = rig.Control($"reach_{arm}_tip").Under(world).PlacedAt(joints[^1]);
        for (var i = 0; i < SegmentsPerArm; i++)
        {
            var (b0, b1, b2) = Bernstein(i / (SegmentsPerArm - 1f));
            var knot = rig.Group($"reach_{arm}_{i:00}_group").Under(holder).PlacedAt(joints[i]);
            rig.Blend(knot).From(holder, b0).From(middle, b1).From(tip, b2);
            rig.Drive(reach.Of(joints[i])).ByChannels(knot);
        }

        var grasp = tip.Switch("reach");
        rig.Blend(chain).From(curl, grasp.Inverse).From(reach, grasp);
        rig.Label($"arm_{arm}_label", $"ARM {arm + 1} REACHES").Under(tip).ShownBy(grasp);
    }

    private static (float B0, float B1, float B2) Bernstein(float t) => ((1 - t) * (1 - t), 2 * t * (1 - t), t * t);
}
