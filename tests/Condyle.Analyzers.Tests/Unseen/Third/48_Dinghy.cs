using System;
using System.Numerics;
using Condyle;

using Row = (string Name, (float X, float Y, float Z) At, (float From, float To)? Turn);

namespace Unseen.Third.R48;

public sealed class Dinghy : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var (hull, world, boat) = Hull(rig);
        var ((_, mastControl), (boom, boomControl)) = Spars(rig, hull, boat);
        var (luff, leech) = (Sail(rig, boom, boomControl, "luff", (0.2f, 0.4f)), Sail(rig, boom, boomControl, "leech", (1.8f, 0.3f)));
        (rig, luff.Last, leech.Last).Tie("peak", mastControl);

        foreach (var (side, sign) in new[] { (Side.Left, 1f), (Side.Right, -1f) })
        {
            var (handle, blade) = Oar(rig, hull, boat, world, (side, sign));
            _ = (handle.LimitTurn(Axis.Y, -60f, 60f), blade.LimitTurn(Axis.X, -90f, 90f));
        }

        var (rudder, tiller) = Pair(hull, ("rudder", (0f, 0.1f, -1.6f)), ("tiller", (0f, 0.5f, 0.3f)));
        var steer = Turn(rig, (rudder, boat), (Channels.Move | Channels.TurnX | Channels.TurnZ, (-45f, 45f)));
        var (_, wag) = (rudder, Turn(rig, (tiller, steer), (Channels.Move, null)));
        wag.Lock(Channels.TurnZ);
    }

    private static (Joint Hull, Control World, Control Boat) Hull(RigDraft rig)
    {
        var hull = rig.Skeleton("dinghy").Root("hull", at: new(0f, 0.2f, 0f));
        var (world, boat) = (rig.Control("world"), rig.Control("boat"));
        boat.Under(world).PlacedAt(hull);
        rig.Drive(hull).ByChannels(boat);
        return (hull, world, boat);
    }

    private static ((Joint Joint, Control Control) Mast, (Joint Joint, Control Control) Boom) Spars(RigDraft rig, Joint hull, Control boat)
    {
        Span<Row> rows =
        [
            ("mast", (0f, 0.4f, 0.8f), null),
            ("gooseneck", (0f, 0.6f, -0.05f), (-90f, 90f)),
            ("boom", (0f, 0f, -0.3f), (-5f, 5f)),
        ];

        var (joint, control) = (hull, boat);
        (Joint, Control) mast = default;
        foreach (var (name, (x, y, z), turn) in rows)
        {
            joint = joint.Child(name, at: new(x, y, z));
            control = rig.Control($"turn_{name}").Under(control).PlacedAt(joint);
            rig.Drive(joint).ByChannels(control);
            if (turn is (var from, var to))
                control.LimitTurn(Axis.Y, from, to);
            if (name is "mast")
                mast = (joint, control);
        }

        return (mast, (joint, control));
    }

    private static (Joint First, Joint Last) Sail(RigDraft rig, Joint boom, Control above, string name, (float Out, float Up) where)
    {
        var first = boom.Child($"{name}_0", at: new(0f, 0.1f, -where.Out));
        var (last, control) = (first, Belly(first, above));
        for (var (i, height) = (1, where.Up); i < 6; (i, height) = (i + 1, height * 0.95f))
        {
            last = last.Child($"{name}_{i}", at: new(0f, height, where.Out > 1f ? 0.25f : 0f));
            control = Belly(last, control);
        }

        return (first, last);

        Control Belly(Joint joint, Control parent)
        {
            var (made, _) = (rig.Control($"belly_{joint}").Under(parent).PlacedAt(joint), 0);
            rig.Drive(joint).ByChannels(made);
            return made;
        }
    }

    private static (Control Handle, Control Blade) Oar(RigDraft rig, Joint hull, Control boat, Control world, (Side Side, float Sign) it)
    {
        var (side, s) = it;
        var lockJoint = hull.Child($"rowlock_{side}", at: new(0.6f * s, 0.4f, -0.1f));
        var (loom, blade) = (lockJoint.Child($"loom_{side}", at: new(0.8f * s, -0.1f, 0.1f)), default(Joint));
        blade = loom.Child($"blade_{side}", at: new(0.9f * s, -0.2f, -0.1f));

        var oar = rig.Chain(lockJoint, blade);
        var (ik, fk) = (oar.Copy("ik").Under(boat), oar.Copy("fk").Under(boat));
        var (goal, pole) = (rig.Control($"dip_{side}"), rig.Control($"dip_pole_{side}"));
        goal.Under(world).PlacedAt(blade);
        pole.Under(boat).PlacedAt(ik.PolePoint(0.5f));
        rig.TwoBone(ik).Reach(goal).Face(pole);

        var (a, b, c) = (Fk(lockJoint, boat), default(Control), default(Control));
        b = Fk(loom, a);
        c = Fk(blade, b);

        var (on, off) = goal.Switch("fk", 1f) is var fkAmount ? ((Weight)fkAmount, fkAmount.Inverse) : default;
        rig.Blend(oar).From(ik, off).From(fk, on);
        foreach (var (name, text, weight) in new[] { ("row", "ROW", on), ("dip", "DIP", off) })
            rig.Label($"{name}_label_{side}", text).Under(a).ShownBy(weight);
        return (a, c);

        Control Fk(Joint joint, Control above)
        {
            var control = rig.Control($"row_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            return control;
        }
    }

    private static (Joint, Joint) Pair(Joint above, (string Name, (float X, float Y, float Z) At) first, (string Name, (float X, float Y, float Z) At) second)
    {
        var one = above.Child(first.Name, at: new(first.At.X, first.At.Y, first.At.Z));
        return (one, one.Child(second.Name, at: new(second.At.X, second.At.Y, second.At.Z)));
    }

    private static Control Turn(RigDraft rig, (Joint Joint, Control Above) it, (Channels Locked, (float From, float To)? Yaw) how)
    {
        var control = rig.Control($"turn_{it.Joint}").Under(it.Above).PlacedAt(it.Joint).Lock(how.Locked);
        rig.Drive(it.Joint).ByChannels(control);
        return how.Yaw is { } yaw ? control.LimitTurn(Axis.Y, yaw.From, yaw.To) : control;
    }
}

internal static class Knots
{
    public static void Tie(this (RigDraft Rig, Joint Near, Joint Far) ends, string name, Control mast)
    {
        var (rig, near, far) = ends;
        var (patch, both) = (near.Child(name, at: new Vector3(0f, 0.2f, 0f)), mast.Switch($"{name}_loose"));
        rig.Blend(patch).From(near, both.Inverse).From(far, both);
    }
}
