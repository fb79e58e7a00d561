using System;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R24;

/// <summary>A joint's name with its offset: <c>"mast" * (0, 1, 0)</c> isn't C#, but <c>Named("mast") + (0, 1, 0)</c> is.</summary>
internal readonly record struct Named(string Name, Vector3 At = default, JointRole Role = JointRole.Deform)
{
    public static Named operator +(Named named, (float X, float Y, float Z) at) => named with { At = named.At + new Vector3(at.X, at.Y, at.Z) };

    public static Named operator ~(Named named) => named with { Role = JointRole.Helper };

    public static Named operator *(Named named, Side side) => new($"{named.Name}_{side}", named.At with { X = named.At.X * side.Sign }, named.Role);

    public static Named operator %(Named named, int number) => named with { Name = $"{named.Name}_{number}" };

    public static implicit operator Named(string name) => new(name);
}

/// <summary>A joint and the control that moves it. <c>/</c> goes down, <c>|</c> limits, <c>&gt;&gt;</c> drives, <c>-</c> locks.</summary>
internal readonly record struct Spar(RigDraft Rig, Joint Joint, Control Control)
{
    public static Spar operator /(Spar above, Named named)
    {
        var joint = above.Joint.Child(named.Name, named.Role, named.At);
        var control = above.Rig.Control($"trim_{named.Name}").Under(above.Control).PlacedAt(joint);
        return new Spar(above.Rig, joint, control) >> joint;
    }

    public static Spar operator >>(Spar spar, Joint joint)
    {
        spar.Rig.Drive(joint).ByChannels(spar.Control);
        return spar;
    }

    public static Spar operator -(Spar spar, Channels locked) => spar with { Control = spar.Control.Lock(locked) };

    public static Spar operator |(Spar spar, (Axis Axis, float Most) turn) =>
        spar with { Control = spar.Control.LimitTurn(turn.Axis, -turn.Most, turn.Most) };

    public static Blended operator &(Spar first, Spar second) => new(first, second);

    public static implicit operator Node(Spar spar) => spar.Control;
}

internal readonly record struct Blended(Spar First, Spar Second)
{
    public Joint this[Named under, Switch amount]
    {
        get
        {
            var joint = First.Joint.Child(under.Name, under.Role, under.At);
            First.Rig.Blend(joint).From(First, !new Amount(amount)).From(Second, +new Amount(amount));
            return joint;
        }
    }
}

internal readonly struct Amount(Weight weight)
{
    private readonly Weight weight = weight;

    public static Weight operator !(Amount amount) => amount.weight.Inverse;

    public static Weight operator +(Amount amount) => amount.weight;

    public static Amount operator ^(Amount a, Amount b) => new(a.weight * b.weight.Inverse + b.weight * a.weight.Inverse);
}

/// <summary>A sailing catamaran with a crew of one on the trapeze.</summary>
public sealed class Catamaran : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var world = rig.Control("world");
        var bridge = rig.Skeleton("catamaran").Root("bridge");
        var boat = new Spar(rig, bridge, rig.Control("boat").Under(world).PlacedAt(bridge)) >> bridge;

        var mast = boat / ((Named)"mast" + (0, 0.3f, 0.6f)) - Channels.Move | (Axis.Y, 40);
        var boom = mast / ((Named)"boom" + (0, 0.5f, -0.1f)) - Channels.Move | (Axis.Y, 85);
        var head = mast;
        for (var i = 1; i <= 6; i++)
            head = head / ((Named)"luff" % i + (0, 1.1f, -0.02f)) - Channels.Move;
        var clew = boom / ((Named)"clew" + (0, 0, -2.2f));

        foreach (var side in Side.Both)
        {
            var hull = boat / ((Named)"hull" * side + (1.2f * side.Sign, -0.2f, 0));
            var board = hull / ((Named)"daggerboard" * side + (0, -0.1f, 0.2f)) - (Channels.Turn | Channels.MoveX | Channels.MoveZ);
            var stock = hull / (~(Named)"rudder_stock" * side + (0, 0.1f, -2.4f)) - Channels.Move | (Axis.X, 90);
            _ = stock / ((Named)"rudder" * side + (0, -0.3f, 0)) - Channels.Move | (Axis.Y, 45);
            board.Control.LimitMove(Axis.Y, 0, 0.9f);

            var raised = board.Control.Switch("raised");
            _ = (hull & board)[(Named)"board_handle" * side + (0, 0.5f, 0.2f), raised];
        }

        Sheet(rig, world, boat, clew);
        Sailor(rig, world, boat);
    }

    private static void Sheet(RigDraft rig, Control world, Spar boat, Spar clew)
    {
        var cleated = boat.Control.Switch("cleated", 1);
        var held = boat.Control.Switch("held");
        var strain = new Amount(cleated) ^ new Amount(held);
        var knots = new Joint[8];
        for (var i = 0; i < knots.Length; i++)
        {
            knots[i] = (i == 0 ? clew.Joint : knots[i - 1]).Child($"sheet_{i}", JointRole.Helper, new Vector3(0, -0.08f, 0.02f));
            var slack = rig.Control($"slack_{i}").Under(i == 0 ? clew : knots[i - 1]).PlacedAt(knots[i]);
            var taut = rig.Group($"taut_{i}_group").Under(boat).PlacedAt(knots[i]);
            rig.Blend(knots[i]).From(taut, +strain).From(slack, !strain);
        }

        rig.Label("strain_label", "SHEET HOLDS").Under(world).ShownBy(+strain);
    }

    private static void Sailor(RigDraft rig, Control world, Spar boat)
    {
        var pelvis = boat / ((Named)"sailor_pelvis" + (1.6f, 0.5f, -0.4f));
        var chest = pelvis / ((Named)"sailor_chest" + (0.1f, 0.35f, 0));
        _ = chest / ((Named)"sailor_head" + (0.05f, 0.35f, 0));
        foreach (var side in Side.Both)
        {
            var arm = Limb(chest, "arm", (0.18f, 0.2f, 0), (0.25f, -0.02f, 0.05f), (0.2f, 0, 0.12f), side, boat);
            var leg = Limb(pelvis, "leg", (0.1f, -0.05f, 0), (0, -0.4f, 0.04f), (0, -0.4f, -0.04f), side, boat);
            leg.AlsoOn(pelvis.Control);
            arm.AlsoOn(chest.Control);
        }

        Switch Limb(Spar root, string name, (float, float, float) a, (float, float, float) b, (float, float, float) c, Side side, Node holds)
        {
            Joint[] bones = new Joint[3];
            var above = root.Joint;
            foreach (var (i, step) in new[] { (0, a), (1, b), (2, c) })
            {
                var named = ((Named)$"sailor_{name}" % i + step) * side;
                bones[i] = above = above.Child(named.Name, at: named.At);
            }

            var chain = rig.Chain(bones[0], bones[2]);
            var ik = chain.Copy("ik").Under(rig.Group($"sailor_{name}_{side}_group").Under(root).PlacedAt(chain.Root));
            var (free, fixedTo) = (rig.Control($"{name}_free_{side}").Under(world).PlacedAt(chain.Tip), rig.Control($"{name}_hold_{side}").Under(holds).PlacedAt(chain.Tip));
            var goal = rig.Group($"{name}_goal_{side}_group").Under(world).PlacedAt(chain.Tip);
            var hold = free.Switch("hold", 1);
            rig.Blend(goal).From(free, !new Amount(hold)).From(fixedTo, +new Amount(hold));
            rig.TwoBone(ik).Reach(goal);
            rig.Blend(chain).From(ik, MathF.Cos(0));
            return hold;
        }
    }
}
