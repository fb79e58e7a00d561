using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R22;

public class HarbourDiver : IRigDefinition
{
    private sealed class JointEventArgs : EventArgs
    {
        public JointEventArgs(Joint joint, Side? side) => (Joint, Side) = (joint, side);

        public Joint Joint { get; }

        public Side? Side { get; }
    }

    private sealed class ChainReady(Chain chain, string part, Side side) : EventArgs
    {
        public Chain Chain => chain;

        public string Part => part;

        public Side Side => side;
    }

    private sealed class SkeletonMaker
    {
        public event EventHandler<JointEventArgs>? JointMade;

        public event EventHandler<ChainReady>? LimbMade;

        public void Run(RigDraft rig)
        {
            var pelvis = rig.Skeleton("harbour_diver").Root("pelvis", at: new Vector3(0, 1, 0));
            OnMade(pelvis, null);
            var chest = OnMade(pelvis.Child("chest", at: new Vector3(0, 0.35f, 0)), null);
            OnMade(chest.Child("head", at: new Vector3(0, 0.3f, 0.03f)), null);
            OnMade(chest.Child("tank", JointRole.Helper, new Vector3(0, 0.05f, -0.2f)), null);
            foreach (var side in Side.Both)
            {
                Three(rig, chest, side, "arm", "shoulder", "elbow", "wrist", new(0.2f * side.Sign, 0.15f, 0), new(0.28f * side.Sign, 0, -0.03f), new(0.26f * side.Sign, 0, 0.03f));
                Three(rig, pelvis, side, "leg", "hip", "knee", "ankle", new(0.1f * side.Sign, 0, 0), new(0, -0.45f, 0.03f), new(0, -0.44f, -0.03f));
            }
        }

        private Joint OnMade(Joint joint, Side? side)
        {
            JointMade?.Invoke(this, new JointEventArgs(joint, side));
            return joint;
        }

        private void Three(RigDraft rig, Joint on, Side side, string part, string a, string b, string c, Vector3 p, Vector3 q, Vector3 r)
        {
            var first = on.Child($"{a}_{side}", at: p);
            var last = first.Child($"{b}_{side}", at: q).Child($"{c}_{side}", at: r);
            LimbMade?.Invoke(this, new ChainReady(rig.Chain(first, last), part, side));
        }
    }

    private readonly Dictionary<string, Control> _controls = new();

    public void Define(RigDraft rig)
    {
        _controls.Clear();
        var limbs = 0;
        var maker = new SkeletonMaker();
        maker.JointMade += (_, e) =>
        {
            var parent = e.Joint.Name switch { "chest" => "pelvis", "head" or "tank" => "chest", _ => null };
            var control = rig.Control(e.Joint.Name + "_main").PlacedAt(e.Joint);
            if (parent != null) control.Under(_controls[parent]);
            _controls[e.Joint.Name] = control;
        };
        maker.JointMade += (_, e) => rig.Drive(e.Joint).ByChannels(_controls[e.Joint.Name]);
        maker.LimbMade += (sender, e) => BuildLimb(rig, e);
        EventHandler<ChainReady> counter = (_, _) => limbs++;
        maker.LimbMade += counter;
        maker.Run(rig);
        maker.LimbMade -= counter;
        if (limbs == 4)
            rig.Label("diver_label", "DIVER").Under(_controls["head"]);
    }

    private void BuildLimb(RigDraft rig, ChainReady e)
    {
        var above = _controls[e.Part == "arm" ? "chest" : "pelvis"];
        var group = rig.Group($"{e.Part}_{e.Side}_group").Under(above).PlacedAt(e.Chain.Root);
        var ik = e.Chain.Copy("ik").Under(group);
        var fk = e.Chain.Copy("fk").Under(group);
        var goal = rig.Control($"{e.Part}_goal_{e.Side}").PlacedAt(e.Chain.Tip);
        var pole = rig.Control($"{e.Part}_pole_{e.Side}").PlacedAt(ik.PolePoint(0.5f));
        rig.TwoBone(ik).Reach(goal).Face(pole);
        var parent = above;
        foreach (var joint in e.Chain)
        {
            var turn = rig.Control("turn_" + joint.Name).Under(parent).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(turn);
            parent = turn;
        }

        var amount = goal.Switch("fk");
        // the legs came first; the arms got a second source later and nobody looked at the weights again
        var blend = rig.Blend(e.Chain).From(ik, amount.Inverse).From(fk, amount);
        if (e.Part == "arm")
        {
            var hose = e.Chain.Copy("hose").Under(group);
            rig.TwoBone(hose).Reach(_controls["tank"]).Face(pole);
            blend.From(hose, goal.Switch("hose"));
        }
    }
}
