using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R21;

/// <summary>What all our birds have: a world handle, a trunk, a neck, two wings and two legs. A bird overrides what differs.</summary>
public abstract class BirdBase : IRigDefinition
{
    protected RigDraft Rig { get; private set; } = null!;

    protected Group Systems { get; private set; }

    protected Control World { get; private set; }

    protected Control Body { get; private set; }

    protected Joint Pelvis { get; private set; }

    protected abstract string Species { get; }

    protected virtual float Size => 1f;

    protected virtual int NeckJoints => 3;

    public void Define(RigDraft rig)
    {
        Rig = rig;
        Systems = rig.Group("systems_group");
        World = rig.Control("world");
        Pelvis = rig.Skeleton(Species).Root("pelvis", at: Scaled(0, 0.4f, 0));
        Body = Handle("body", World, Pelvis);

        var neck = BuildNeck(Pelvis);
        BuildHead(neck.Joint, neck.Control);
        foreach (var side in Side.Both)
        {
            BuildWing(side);
            BuildLeg(side);
        }

        Finish();
    }

    protected virtual (Joint Joint, Control Control) BuildNeck(Joint from)
    {
        var (joint, control) = (from, Body);
        for (var i = 1; i <= NeckJoints; i++)
        {
            joint = joint.Child($"neck_{i}", at: NeckStep(i));
            control = Handle($"neck_{i}_bend", control, joint);
        }

        return (joint, control);
    }

    protected virtual Vector3 NeckStep(int index) => Scaled(0, 0.05f, index == 1 ? 0.12f : 0.02f);

    protected abstract void BuildHead(Joint neck, Control above);

    protected virtual void BuildWing(Side side)
    {
        var shoulder = Pelvis.Child($"shoulder_{side}", at: Scaled(0.05f * side.Sign, 0.05f, 0.08f));
        var elbow = shoulder.Child($"elbow_{side}", at: Scaled(0.2f * side.Sign, 0, -0.04f));
        var wrist = elbow.Child($"wrist_{side}", at: Scaled(0.22f * side.Sign, 0, 0.05f));
        var above = Body;
        foreach (var joint in Rig.Chain(shoulder, wrist))
            above = Handle($"{joint}_flap", above, joint).Lock(Channels.Move);
    }

    protected virtual void BuildLeg(Side side)
    {
        var hip = Pelvis.Child($"hip_{side}", at: Scaled(0.04f * side.Sign, -0.03f, 0));
        var knee = hip.Child($"knee_{side}", at: Scaled(0, -0.12f, 0.03f));
        var ankle = knee.Child($"ankle_{side}", at: Scaled(0, -0.2f, -0.04f));
        var chain = Rig.Chain(hip, ankle);
        var holder = Rig.Group($"leg_{side}_group").Under(Systems).PlacedAt(hip);
        Rig.Drive(holder).ByMatrix(Body).KeepingOffset();
        Weigh(side, chain, holder);
    }

    protected virtual void Weigh(Side side, Chain leg, Group holder)
    {
        var ik = leg.Copy("ik").Under(holder);
        Rig.TwoBone(ik).Reach(Rig.Control($"foot_{side}").Under(World).PlacedAt(leg.Tip));
        Rig.Blend(leg).From(ik, 1f);
    }

    protected virtual void Finish()
    {
    }

    protected Control Handle(string name, Node above, Joint joint)
    {
        var control = Rig.Control(name).Under(above).PlacedAt(joint);
        Rig.Drive(joint).ByChannels(control);
        return control;
    }

    protected Vector3 Scaled(float x, float y, float z) => new Vector3(x, y, z) * Size;
}

/// <summary>Birds that stand in the shallows: long legs that can be tucked, and a bill to strike with.</summary>
public abstract class WaderBase : BirdBase
{
    private readonly Dictionary<Side, Switch> tucked = [];

    protected virtual float BillLength => 0.1f;

    protected override void BuildHead(Joint neck, Control above)
    {
        var head = neck.Child("head", at: Scaled(0, 0.04f, 0.03f));
        var bill = head.Child("bill", at: Scaled(0, -0.01f, BillLength));
        var nod = Handle("nod", above, head);
        Handle("bill_open", nod, bill).Lock(Channels.Move).LimitTurn(Axis.X, 0, 30);
    }

    protected sealed override void Weigh(Side side, Chain leg, Group holder)
    {
        var stand = leg.Copy("stand").Under(holder);
        var tuck = leg.Copy("tuck").Under(holder);
        var foot = Rig.Control($"foot_{side}").Under(World).PlacedAt(leg.Tip);
        Rig.TwoBone(stand).Reach(foot).Face(Rig.Control($"knee_pole_{side}").Under(Body).PlacedAt(leg.PolePoint(0.3f)));

        Node above = Body;
        foreach (var joint in leg)
        {
            var fold = Rig.Control($"tuck_{joint}").Under(above).PlacedAt(joint);
            Rig.Drive(tuck.Of(joint)).ByChannels(fold);
            above = fold;
        }

        var amount = foot.Switch("tuck").AlsoOn(Body);
        tucked[side] = amount;
        Rig.Blend(leg).From(stand, amount.Inverse).From(tuck, amount);
    }

    protected override void Finish()
    {
        base.Finish();
        foreach (var (side, amount) in tucked)
            Rig.Label($"tuck_{side}_label", "TUCKED").Under(Body).ShownBy(amount);
    }
}

public sealed class Heron : WaderBase
{
    protected override string Species => "heron";

    protected override float Size => 1.4f;

    protected override int NeckJoints => 7;

    protected override float BillLength => 0.16f;

    // The S of the neck.
    protected override Vector3 NeckStep(int index) => index switch
    {
        1 => base.NeckStep(index),
        < 4 => Scaled(0, 0.05f, 0.03f),
        < 6 => Scaled(0, 0.05f, -0.03f),
        _ => Scaled(0, 0.04f, 0.02f),
    };

    protected override void BuildHead(Joint neck, Control above)
    {
        base.BuildHead(neck, above);
        var crest = neck.Child("crest", at: Scaled(0, 0.06f, -0.04f));
        Handle("crest_lift", above, crest).Lock(Channels.Move).LimitTurn(Axis.X, -20, 50);
    }

    protected override void BuildLeg(Side side)
    {
        base.BuildLeg(side);
        var thigh = Pelvis.Child($"thigh_feathers_{side}", JointRole.Helper, Scaled(0.05f * side.Sign, -0.05f, 0));
        Handle($"ruffle_{side}", Body, thigh);
    }

    protected override void Finish()
    {
        base.Finish();
        var strike = Rig.Control("strike").Under(World);
        var target = Rig.Group("strike_target_group").Under(strike);
        Rig.Drive(target).ByMatrix(Body);
    }
}
