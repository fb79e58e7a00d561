using System;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R11;

/// <summary>
/// The bunkering hose between quay and ship. At rest it is a catenary y = a cosh(x / a) in the YZ plane, sampled at equal arc length;
/// each joint looks down the tangent. Controls sit at the knots, joints between two knots blend linearly.
/// </summary>
public sealed class FuelHose : IRigDefinition
{
    private const int Samples = 13;
    private const float A = 2.5f;        // catenary parameter, metres
    private const float HalfSpan = 3f;   // metres

    public void Define(RigDraft rig)
    {
        Span<Frame> frames = stackalloc Frame[Samples];
        SampleCatenary(frames);

        var joints = DeclareJoints(rig.Skeleton("fuel_hose"), frames);

        ReadOnlySpan<int> knots = [0, 4, 8, Samples - 1];
        var handles = new Control[knots.Length];
        for (int k = 0; k < knots.Length; k++)
        {
            handles[k] = rig.Control($"hose_{k}").PlacedAt(joints[knots[k]]);
            rig.Drive(joints[knots[k]]).ByChannels(handles[k]);
        }

        for (int k = 0; k + 1 < knots.Length; k++)
        {
            int from = knots[k], to = knots[k + 1];
            for (int i = from + 1; i < to; i++)
            {
                float t = (i - from) / (float)(to - from);
                BetweenKnots(rig, joints[i], handles[k], handles[k + 1], Smooth(t));
            }
        }
    }

    /// <summary>The joint keeps its rest place relative to both knots, hence a group for it under each of them.</summary>
    private static void BetweenKnots(RigDraft rig, Joint joint, Control a, Control b, float t)
    {
        var inA = rig.Group($"{joint}_in_{a}_group").Under(a).PlacedAt(joint);
        var inB = rig.Group($"{joint}_in_{b}_group").Under(b).PlacedAt(joint);
        rig.Blend(joint).From(inA, 1f - t).From(inB, t);
    }

    private static Joint[] DeclareJoints(Skeleton skeleton, ReadOnlySpan<Frame> frames)
    {
        var joints = new Joint[frames.Length];
        joints[0] = skeleton.Root("hose_joint_00", at: frames[0].Position, turned: frames[0].Rotation);
        for (int i = 1; i < frames.Length; i++)
        {
            var local = frames[i].RelativeTo(frames[i - 1]);
            joints[i] = joints[i - 1].Child($"hose_joint_{i:00}", at: local.Position, turned: local.Rotation);
        }

        return joints;
    }

    private static void SampleCatenary(Span<Frame> frames)
    {
        // s(x) = a sinh(x / a), so x(s) = a asinh(s / a).
        float total = 2f * A * MathF.Sinh(HalfSpan / A);
        for (int i = 0; i < frames.Length; i++)
        {
            float s = total * (i / (float)(frames.Length - 1) - 0.5f);
            float x = A * MathF.Asinh(s / A);
            float y = A * MathF.Cosh(x / A);
            float slope = MathF.Sinh(x / A);

            // +Z down the hose: pitch about X by −atan(dy/dx).
            var rotation = Quaternion.CreateFromAxisAngle(Vector3.UnitX, -MathF.Atan(slope));
            frames[i] = new Frame(new Vector3(0f, y, x), rotation);
        }
    }

    private static float Smooth(float t) => t * t * (3f - 2f * t);

    private readonly record struct Frame(Vector3 Position, Quaternion Rotation)
    {
        public Frame RelativeTo(in Frame parent)
        {
            var inverse = Quaternion.Conjugate(parent.Rotation);
            return new Frame(
                Vector3.Transform(Position - parent.Position, inverse),
                Quaternion.Normalize(inverse * Rotation));
        }
    }
}
