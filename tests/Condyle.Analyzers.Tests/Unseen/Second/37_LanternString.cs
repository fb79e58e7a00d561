using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R37;

/// <summary>Lanterns on a rope between two posts. The rope hangs in a catenary, and each lantern swings about where it hangs.</summary>
public sealed class LanternString : IRigDefinition
{
    private static readonly Catenary Rope = Catenary.Between(new Vector3(-4f, 3.2f, 0), new Vector3(4f, 3.2f, 0), sag: 1.1f);

    public void Define(RigDraft rig)
    {
        var left = rig.Skeleton("lantern_string").Root("post_left", at: Rope.Start);
        var posts = rig.Control("posts").PlacedAt(left);
        rig.Drive(left).ByChannels(posts);

        var joints = new List<Joint> { left };
        var lowest = (Joint: left, Height: float.PositiveInfinity);
        const int lanterns = 9;
        var before = Rope.Start;
        for (var i = 1; i <= lanterns; i++)
        {
            var t = i / (float)(lanterns + 1);
            var at = Rope.At(t);
            var step = at - before;
            var rope = joints[^1].Child($"rope_{i}", at: step);
            if (at.Y < lowest.Height - 1e-4f)
                lowest = (rope, at.Y);
            joints.Add(rope);
            before = at;
        }

        joints.Add(joints[^1].Child("post_right", at: Rope.End - before));

        var sway = rig.Control("sway").Under(posts).PlacedAt(lowest.Joint).Lock(Channels.Move | Channels.TurnY);
        var gust = sway.Switch("gust", atRest: 0.2f);
        for (var i = 1; i < joints.Count - 1; i++)
        {
            var share = MathF.Sin(MathF.PI * i / (joints.Count - 1));
            Hang(rig, joints[i], posts, sway, gust, i, share);
        }

        var end = rig.Control("post_right_move").Under(posts).PlacedAt(joints[^1]);
        rig.Drive(joints[^1]).ByChannels(end);
    }

    private static void Hang(RigDraft rig, Joint rope, Control posts, Control sway, Switch gust, int number, float share)
    {
        var still = rig.Group($"rope_{number}_still_group").Under(posts).PlacedAt(rope);
        var moved = rig.Group($"rope_{number}_swept_group").Under(sway).PlacedAt(rope);
        var strength = share * gust;
        rig.Blend(rope).From(still, strength.Inverse).From(moved, strength);

        var tilt = Quaternion.CreateFromAxisAngle(Vector3.UnitZ, Rope.Slope(number / 10f) / 2);
        var lantern = rope.Child($"lantern_{number}", at: Vector3.Transform(new Vector3(0, -0.25f, 0), tilt), turned: Quaternion.Normalize(tilt));
        var reach = Math.Clamp(50f - 8f * Math.Abs(5 - number), 15f, 45f);
        var swing = rig.Control($"swing_{number}").Under(moved).PlacedAt(lantern).Lock(Channels.Move)
            .LimitTurn(Axis.X, -reach, reach)
            .LimitTurn(Axis.Z, -reach, reach);
        rig.Drive(lantern).ByChannels(swing);
    }

    /// <summary>y = a cosh(x / a), through two points of the same height.</summary>
    private readonly record struct Catenary(Vector3 Start, Vector3 End, float A)
    {
        public static Catenary Between(Vector3 start, Vector3 end, float sag)
        {
            var half = Vector3.Distance(start, end) / 2;
            float low = 0.1f, high = 1000f;
            for (var step = 0; step < 60; step++)
            {
                var middle = (low + high) / 2;
                var depth = middle * (MathF.Cosh(half / middle) - 1);
                if (depth > sag)
                    low = middle;
                else
                    high = middle;
            }

            return new Catenary(start, end, MathF.Round((low + high) / 2, 3));
        }

        public Vector3 At(float t)
        {
            var x = Along(t);
            var drop = A * (MathF.Cosh(x / A) - MathF.Cosh(Along(0) / A));
            return Vector3.Lerp(Start, End, t) + drop * Vector3.UnitY;
        }

        public float Slope(float t) => MathF.Atan(MathF.Sinh(Along(t) / A));

        private float Along(float t) => (t - 0.5f) * Vector3.Distance(Start, End);
    }
}
