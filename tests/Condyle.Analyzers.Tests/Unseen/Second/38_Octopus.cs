using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R38;

/// <summary>An octopus in a bucket on the quay: eight arms on a circle, each with what its flags ask for.</summary>
public sealed class Octopus : IRigDefinition
{
    private const int PerArm = 6;

    public void Define(RigDraft rig)
    {
        var mantle = rig.Skeleton("octopus").Root("mantle", at: new Vector3(0, 0.3f, 0));
        var body = rig.Control("body").PlacedAt(mantle);
        rig.Drive(mantle).ByChannels(body);

        Span<Vector2> circle = stackalloc Vector2[8];
        for (var i = 0; i < circle.Length; i++)
        {
            var (sin, cos) = MathF.SinCos(MathF.Tau * (i + 0.5f) / circle.Length);
            circle[i] = new Vector2(cos, sin) * 0.12f;
        }

        var wishes = WishesPerArm();
        for (var i = 0; i < circle.Length; i++)
        {
            var joints = Arm(mantle, i, circle[i]);
            Pose(rig, joints, i, body, wishes[i]);
        }
    }

    private static ArmWishes[] WishesPerArm()
    {
        var wishes = new ArmWishes[8];
        Array.Fill(wishes, ArmWishes.Curl);
        foreach (ref var wish in wishes.AsSpan()[..2])
            wish |= ArmWishes.Reach;
        foreach (ref var wish in wishes.AsSpan(^2..))
            wish |= ArmWishes.Reach | ArmWishes.Stretch;
        wishes[3] ^= ArmWishes.Curl;
        wishes[4] &= ~ArmWishes.Curl;
        wishes[4] |= ArmWishes.Everything & ArmWishes.Stretch;
        return wishes;
    }

    private static Joint[] Arm(Joint mantle, int number, Vector2 at)
    {
        var joints = new Joint[PerArm];
        var name = (stackalloc char[] { 'a', 'r', 'm', '_', (char)('a' + number), '_' }).ToString();
        var outwards = Vector2.Normalize(at);
        joints[0] = mantle.Child(name + '0', at: new Vector3(at.X, -0.1f, at.Y));
        foreach (var i in Enumerable.Range(1, PerArm - 1))
        {
            var length = 0.11f * MathF.Pow(0.85f, i);
            joints[i] = joints[i - 1].Child(name + i, at: new Vector3(outwards.X * length, i < 2 ? 0.03f : -0.045f + 0.015f * i, outwards.Y * length));
        }

        return joints;
    }

    private static void Pose(RigDraft rig, ReadOnlySpan<Joint> joints, int number, Control body, ArmWishes wishes)
    {
        var turns = new List<Control>();
        var locked = wishes.HasFlag(ArmWishes.Stretch) ? Channels.None : Channels.Move;
        foreach (var joint in joints[..3])
            turns.Add(rig.Control($"turn_{joint}").Under(turns is [] ? body : turns[^1]).PlacedAt(joint).Lock(locked));

        if ((wishes & ArmWishes.Reach) != 0)
        {
            var (root, tip) = (joints[0], joints[2]);
            var chain = rig.Chain(root, tip);
            var group = rig.Group($"reach_{number}_group").Under(body).PlacedAt(root);
            var ik = chain.Copy("ik").Under(group);
            var fk = chain.Copy("fk").Under(group);
            var goal = rig.Control($"reach_{number}").PlacedAt(tip);
            rig.TwoBone(ik).Reach(goal).Face(rig.Control($"pole_{number}").Under(body).PlacedAt(ik.PolePoint(0.2f)));
            for (var i = 0; i < 3; i++)
                rig.Drive(fk.Of(joints[i])).ByChannels(turns[i]);
            var amount = goal.Switch("reach", 0.5f);
            rig.Blend(chain).From(ik, amount).From(fk, amount.Inverse);
        }
        else
        {
            for (var i = 0; i < turns.Count; i++)
                rig.Drive(joints[i]).ByChannels(turns[i]);
        }

        Curl(rig, joints[3..], turns[^1], wishes);
    }

    private static void Curl(RigDraft rig, ReadOnlySpan<Joint> rest, Node above, ArmWishes wishes)
    {
        if (rest.IsEmpty)
            return;
        var control = rig.Control($"curl_{rest[0]}").Under(above).PlacedAt(rest[0]);
        if (!wishes.HasFlag(ArmWishes.Curl))
            control.Lock(Channels.TurnX | Channels.TurnZ);
        rig.Drive(rest[0]).ByChannels(control);
        Curl(rig, rest[1..], control, wishes);
    }

    [Flags]
    private enum ArmWishes : byte
    {
        Nothing = 0,
        Curl = 1,
        Reach = 1 << 1,
        Stretch = 1 << 2,
        Everything = Curl | Reach | Stretch,
    }
}
