using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R11;

public sealed class JointMadeEventArgs(Joint joint, string? above, string kind) : EventArgs
{
    public Joint Joint { get; } = joint;

    public string? Above { get; } = above;

    public string Kind { get; } = kind;

    public bool Handled { get; set; }
}

public sealed class ControlMadeEventArgs(Control control, Joint joint) : EventArgs
{
    public Control Control { get; } = control;

    public Joint Joint { get; } = joint;
}

/// <summary>Says when something of the tug is there. Parts that care about it listen.</summary>
public sealed class Slipway
{
    public event EventHandler<JointMadeEventArgs>? JointMade;

    public event EventHandler<ControlMadeEventArgs>? ControlMade;

    public event Action? Launched;

    public void Raise(Joint joint, string? above, string kind) => JointMade?.Invoke(this, new JointMadeEventArgs(joint, above, kind));

    public void Raise(Control control, Joint joint) => ControlMade?.Invoke(this, new ControlMadeEventArgs(control, joint));

    public void Launch() => Launched?.Invoke();
}

/// <summary>A harbour tug with a towing arm, fenders, a funnel and two thrusters.</summary>
public sealed class Tugboat : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var slipway = new Slipway();
        var handles = new Handles(rig, slipway);
        using var towing = new TowingArm(rig, slipway, handles);
        using var log = new Manifest(rig, slipway);

        slipway.JointMade += (_, made) =>
        {
            if (made.Kind == "fender" && !made.Handled)
            {
                var squash = rig.Control($"{made.Joint}_squash").Under(handles["hull"]).PlacedAt(made.Joint).Unlock(Channels.Scale).Lock(Channels.Turn);
                rig.Drive(made.Joint).ByChannels(squash).WithScale();
                made.Handled = true;
            }
        };
        slipway.JointMade += handles.OnJointMade;

        Lay(rig, slipway);
        slipway.Launch();
    }

    private static void Lay(RigDraft rig, Slipway slipway)
    {
        var hull = Say(rig.Skeleton("tugboat").Root("hull"), null, "hull");
        var deck = Say(hull.Child("deck", at: new(0, 1.2f, 0)), "hull", "deck");
        Say(deck.Child("wheelhouse", at: new(0, 1.1f, 1.2f)), "deck", "house");
        var funnel = Say(deck.Child("funnel", at: new(0, 1.4f, -0.8f)), "deck", "funnel");
        Say(funnel.Child("funnel_cap", at: new(0, 0.8f, 0)), "funnel", "cap");

        var slew = Say(deck.Child("tow_slew", at: new(0, 0.4f, -2.2f)), "deck", "slew");
        var arm = Say(slew.Child("tow_arm", at: new(0, 0.5f, 0)), "tow_slew", "arm");
        var jib = Say(arm.Child("tow_jib", at: new(0, 1.1f, -0.4f)), "tow_arm", "arm");
        Say(jib.Child("tow_hook", at: new(0, -0.2f, -1.2f)), "tow_jib", "hook");

        foreach (var side in Side.Both)
        {
            for (var i = 0; i < 6; i++)
                Say(hull.Child($"fender_{i}_{side}", at: new(1.6f * side.Sign, 0.9f, 2.5f - i)), "hull", "fender");
            var pod = Say(hull.Child($"thruster_{side}", at: new(0.7f * side.Sign, -0.8f, -1.8f)), "hull", "slew");
            Say(pod.Child($"screw_{side}", at: new(0, -0.3f, -0.2f)), $"thruster_{side}", "screw");
        }

        Joint Say(Joint joint, string? above, string kind)
        {
            slipway.Raise(joint, above, kind);
            return joint;
        }
    }

    private sealed class Handles(RigDraft rig, Slipway slipway)
    {
        private readonly Control world = rig.Control("world");
        private readonly Dictionary<string, Control> byJoint = [];

        public Control this[string joint] => byJoint[joint];

        public Control World => world;

        public void OnJointMade(object? sender, JointMadeEventArgs made)
        {
            if (made.Handled || made.Kind is "arm" or "hook")
                return;

            var control = rig.Control($"{made.Joint}_turn").PlacedAt(made.Joint);
            control.Under(made.Above is null ? world : byJoint[made.Above]);
            if (made.Kind is "slew" or "screw")
                control.Lock(Channels.Move | Channels.TurnX);
            rig.Drive(made.Joint).ByChannels(control);
            byJoint.Add(made.Joint.Name, control);
            made.Handled = true;
            slipway.Raise(control, made.Joint);
        }
    }

    private sealed class TowingArm : IDisposable
    {
        private readonly RigDraft rig;
        private readonly Slipway slipway;
        private readonly Handles handles;
        private readonly Queue<Joint> bones = new();

        public TowingArm(RigDraft rig, Slipway slipway, Handles handles)
        {
            this.rig = rig;
            this.slipway = slipway;
            this.handles = handles;
            slipway.JointMade += Collect;
            slipway.Launched += Solve;
        }

        public void Dispose()
        {
            slipway.JointMade -= Collect;
            slipway.Launched -= Solve;
        }

        private void Collect(object? sender, JointMadeEventArgs made)
        {
            if (made.Kind is not ("arm" or "hook"))
                return;
            bones.Enqueue(made.Joint);
            made.Handled = true;
        }

        private void Solve()
        {
            var root = bones.Dequeue();
            var middle = bones.Dequeue();
            var hook = bones.Dequeue();
            var chain = rig.Chain(root, hook);

            var group = rig.Group("towing_group").Under(handles["tow_slew"]).PlacedAt(root);
            var towed = chain.Copy("towed").Under(group);
            var idle = chain.Copy("idle").Under(group);
            var goal = rig.Control("tow_goal").Under(handles.World).PlacedAt(hook);
            rig.TwoBone(towed).Reach(goal).Face(rig.Control("tow_pole").Under(handles["tow_slew"]).PlacedAt(towed.PolePoint(1f)));

            Node above = handles["tow_slew"];
            foreach (var joint in new[] { root, middle, hook })
            {
                var control = rig.Control($"{joint}_idle").Under(above).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(idle.Of(joint)).ByChannels(control);
                slipway.Raise(control, joint);
                above = control;
            }

            var tow = goal.Switch("towed").AlsoOn(handles["deck"]);
            rig.Blend(chain).From(towed, tow).From(idle, tow.Inverse);
            rig.Label("towed_label", "TOW").Under(goal).ShownBy(tow);
        }
    }

    private sealed class Manifest : IDisposable
    {
        private readonly Slipway slipway;
        private readonly EventHandler<ControlMadeEventArgs> counting;
        private int controls;

        public Manifest(RigDraft rig, Slipway slipway)
        {
            this.slipway = slipway;
            counting = (_, _) => controls++;
            slipway.ControlMade += counting;
            slipway.Launched += () => rig.Label("manifest_label", $"{controls} handles");
        }

        public void Dispose() => slipway.ControlMade -= counting;
    }
}
