using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R45;

/// <summary>A dinghy with mast, boom, jib and trapeze. Written in the words of the club: everything that isn't Condyle's is an extension below.</summary>
public sealed class SailingDinghy : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var hull = rig.Skeleton("sailing_dinghy").Root("hull", at: 0.3f.Up);
        var sheet = rig.Control("dinghy").Carrying(rig, hull);
        var mast = hull.Stepped("mast", 1.2f.Ahead);
        var rake = rig.Hinge(mast, sheet, Axis.X, (-4, 6));

        var boom = mast.Stepped("boom", 0.6f.Up + 0.05f.Astern);
        var swing = rig.Hinge(boom, rake, Axis.Y, (-85, 85));
        var clew = boom.Stepped("clew", 2.4f.Astern);
        rig.Hinge(clew, swing, Axis.Z, (-10, 10)).Named(out var outhaul);

        mast.Up(("spreader", 2.5f), ("forestay", 1.4f), ("head", 1.6f))
            .Riding(rig, rake, bend: 5f)
            .Last()
            .Flag(rig, "burgee", outhaul);

        foreach (var side in Side.Both)
        {
            var shroud = mast.Stepped($"shroud_{side}", side.Out(0.7f) + 0.2f.Up);
            var wire = shroud.Stepped($"trapeze_{side}", side.Out(0.4f) - 0.8f.Up);
            var ring = wire.Stepped($"ring_{side}", side.Out(0.1f) - 0.9f.Up);
            rig.Chain(shroud, ring).HangsBetween(rig, sheet, side);
        }
    }
}

internal static class Directions
{
    extension(float metres)
    {
        public Vector3 Up => new(0, metres, 0);

        public Vector3 Ahead => new(0, 0, metres);

        public Vector3 Astern => -metres.Ahead;
    }

    extension(Side side)
    {
        public Vector3 Out(float metres) => side.Sign * metres * Vector3.UnitX;

        public string Board => side == Side.Left ? "port" : "starboard";
    }
}

internal static class Seamanship
{
    extension(RigDraft rig)
    {
        public Control Hinge(Joint joint, Control above, Axis axis, (float From, float To) degrees)
        {
            var others = Channels.Move | Channels.Turn & ~axis.Turn;
            var control = rig.Control($"{joint}_hinge").Under(above).PlacedAt(joint).Lock(others).LimitTurn(axis, degrees.From, degrees.To);
            rig.Drive(joint).ByChannels(control);
            return control;
        }
    }

    extension(Axis axis)
    {
        public Channels Turn => (Channels)((int)Channels.TurnX << (int)axis);
    }

    extension(Joint joint)
    {
        public Joint Stepped(string name, Vector3 at) => joint.Child(name, at: at);

        public IEnumerable<Joint> Up(params (string Name, float Metres)[] parts)
        {
            var above = joint;
            foreach (var (name, metres) in parts)
                yield return above = above.Child(name, at: metres.Up);
        }

        public void Flag(RigDraft rig, string name, Control shownOn)
        {
            var flag = joint.Stepped(name, 0.15f.Up);
            var flutter = rig.Control($"{name}_flutter").Under(joint).PlacedAt(flag).Lock(Channels.Move);
            rig.Drive(flag).ByChannels(flutter);
            rig.Label($"{name}_label", "racing").Under(joint).ShownBy(shownOn.Switch("racing"));
        }
    }

    public static Control Carrying(this Control control, RigDraft rig, Joint joint)
    {
        rig.Drive(joint).ByChannels(control = control.PlacedAt(joint));
        return control;
    }

    public static Control Named(this Control control, out Control name) => name = control;

    public static IReadOnlyList<Joint> Riding(this IEnumerable<Joint> joints, RigDraft rig, Control above, float bend)
    {
        var ridden = joints.ToList();
        for (var i = 0; i < ridden.Count; i++)
            above = rig.Hinge(ridden[i], above, Axis.X, (-bend * (i + 1), bend));
        return ridden;
    }

    public static void HangsBetween(this Chain wire, RigDraft rig, Control hull, Side side)
    {
        var parts = rig.Group($"trapeze_{side}_group").Under(hull).PlacedAt(wire.Root);
        var taut = wire.Copy("taut").Under(parts);
        var slack = wire.Copy("slack").Under(parts);
        var sailor = rig.Control($"sailor_{side.Board}").Under(hull).PlacedAt(wire.Tip).Lock(Channels.Turn);
        rig.TwoBone(taut).Reach(sailor).Face(rig.Control($"wire_pole_{side.Board}").Under(parts).PlacedAt(taut.PolePoint(0.5f)));

        var hooked = sailor.Switch("hooked");
        rig.Blend(wire).From(taut, hooked).From(slack, hooked.Inverse);
        rig.Label($"trapeze_label_{side}", $"{char.ToUpperInvariant(side.Board[0])}{side.Board.AsSpan(1)} on the wire").Under(sailor).ShownBy(hooked);
    }
}
