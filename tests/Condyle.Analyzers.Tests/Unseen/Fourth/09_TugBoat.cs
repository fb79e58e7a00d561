using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R09;

internal static class TugWords
{
    extension(RigDraft rig)
    {
        public Control Handle(Joint joint, Node? under = null)
        {
            var control = rig.Control($"{joint.Name}_main").PlacedAt(joint);
            if (under is { } parent)
                control = control.Under(parent);
            rig.Drive(joint).ByChannels(control);
            return control;
        }

        public void Fade(Joint target, Node from, Node to, Switch by) => rig.Blend(target).From(from, by.Inverse).From(to, by);

        public Group Systems => rig.Group("systems_group");
    }

    extension(Control control)
    {
        public Control OnlyTurn => control.Lock(Channels.Move);

        public Control Spinning(Axis axis) => axis switch
        {
            Axis.X => control.OnlyTurn.Lock(Channels.TurnY | Channels.TurnZ),
            Axis.Y => control.OnlyTurn.Lock(Channels.TurnX | Channels.TurnZ),
            _ => control.OnlyTurn.Lock(Channels.TurnX | Channels.TurnY),
        };
    }

    extension(Joint joint)
    {
        public Joint Fitting(string name, float x, float y, float z) => joint.Child(name, JointRole.Deform, new Vector3(x, y, z));

        public string Stem => joint.Name.Split('_')[0];
    }

    extension(Side side)
    {
        public string Ship => side == Side.Left ? "port" : "starboard";

        public static IEnumerable<float> Signs
        {
            get
            {
                foreach (var s in Side.Both)
                    yield return s.Sign;
            }
        }
    }

    public static Label Telling(this Switch by, RigDraft rig, string what) => rig.Label($"{what}_label", what.ToUpperInvariant()).ShownBy(by);
}

public sealed class TugBoat : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var hull = rig.Skeleton("tug_boat").Root("hull", at: new Vector3(0, 0.4f, 0));
        var sea = rig.Control("sea");
        var main = rig.Handle(hull, sea).LimitTurn(Axis.Z, -20, 20).LimitTurn(Axis.X, -12, 12);

        var rudder = rig.Handle(hull.Fitting("rudder", 0, -0.6f, -4), main).Spinning(Axis.Y).LimitTurn(Axis.Y, -35, 35);
        rig.Handle(hull.Fitting("propeller", 0, -0.7f, -3.7f), main).Spinning(Axis.Z);
        var wheel = rig.Handle(hull.Fitting("wheel", 0, 2.1f, 0.8f), main).Spinning(Axis.Z);

        foreach (var side in Side.Both)
        {
            var fender = hull.Fitting($"fender_{side}", 1.8f * side.Sign, 0.2f, 0.5f);
            var hung = rig.Control($"fender_hung_{side}").Under(main).PlacedAt(fender);
            var floating = rig.Control($"fender_afloat_{side}").Under(sea).PlacedAt(fender);
            var afloat = hung.Switch("afloat").AlsoOn(floating);
            rig.Fade(fender, hung, floating, afloat);
            afloat.Telling(rig, $"afloat_{fender.Stem}_{side.Ship}");
        }

        var systems = rig.Systems.Under(main);
        var y = 0f;
        foreach (var sign in Side.Signs)
            y += sign;
        var hook = hull.Fitting("tow_hook", y, 0.9f, -2.5f);
        rig.Handle(hook, rig.Group("tow_group").Under(systems).PlacedAt(hook)).OnlyTurn.LimitTurn(Axis.Y, -80, 80);
        _ = (rudder, wheel);
    }
}
