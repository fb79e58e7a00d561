using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R13;

public sealed class Foreman : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var body = Body.Of(rig, "foreman", "pelvis", 1f)
            .Up("waist", 0.15f).Up("chest", 0.22f).Mark("chest")
            .Up("neck", 0.25f).Up("head", 0.1f)
            .Back("chest");

        body.Arm(Side.Left).Of(0.17f, 0.3f, 0.27f).WithPole(0.5f).StartingIn("ik").Labelled().Done()
            .Arm(Side.Right).Of(0.17f, 0.3f, 0.27f).WithPole(0.5f).StartingIn("fk").Done()
            .Finish();
    }
}

internal sealed class Body
{
    private readonly RigDraft rig;
    private readonly Dictionary<string, (Joint, Control)> marks = new();
    private Joint joint;
    private Control control;

    private Body(RigDraft rig, Joint joint, Control control)
    {
        this.rig = rig;
        this.joint = joint;
        this.control = control;
        Systems = rig.Group("systems_group");
    }

    public RigDraft Rig => rig;

    public Group Systems { get; }

    public Control Here => control;

    public Joint Joint => joint;

    public static Body Of(RigDraft rig, string skeleton, string root, float height)
    {
        var joint = rig.Skeleton(skeleton).Root(root, at: new Vector3(0, height, 0));
        var control = rig.Control(root + "_main").PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return new Body(rig, joint, control);
    }

    public Body Up(string name, float by)
    {
        joint = joint.Child(name, at: new Vector3(0, by, 0));
        control = rig.Control(name + "_main").Under(control).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return this;
    }

    public Body Mark(string name)
    {
        marks.Add(name, (joint, control));
        return this;
    }

    public Body Back(string name)
    {
        (joint, control) = marks[name];
        return this;
    }

    public ArmSentence Arm(Side side) => new(this, side);

    public void Finish() => Rig.Label("foreman_label", "FOREMAN").Under(marks["chest"].Item2);
}

internal sealed class ArmSentence
{
    private readonly Body body;
    private readonly Side side;
    private float outward, upper, lower, pole = 0.3f, atRest;
    private bool labelled;

    public ArmSentence(Body body, Side side) => (this.body, this.side) = (body, side);

    public ArmSentence Of(float outward, float upper, float lower) => With(() => (this.outward, this.upper, this.lower) = (outward, upper, lower));

    public ArmSentence WithPole(float distance) => With(() => pole = distance);

    public ArmSentence StartingIn(string tag) => With(() => atRest = tag == "fk" ? 1 : 0);

    public ArmSentence Labelled() => With(() => labelled = true);

    private ArmSentence With(Action change)
    {
        change();
        return this;
    }

    public Body Done()
    {
        var rig = body.Rig;
        var shoulder = body.Joint.Child($"shoulder_{side}", at: new Vector3(outward * side.Sign, 0.15f, 0));
        var elbow = shoulder.Child($"elbow_{side}", at: new Vector3(upper * side.Sign, 0, -0.02f));
        var wrist = elbow.Child($"wrist_{side}", at: new Vector3(lower * side.Sign, 0, 0.02f));
        var arm = rig.Chain(shoulder, wrist);
        var parts = rig.Group($"arm_{side}_group").Under(body.Systems).PlacedAt(shoulder);
        rig.Drive(parts).ByMatrix(body.Here).KeepingOffset();
        var ik = arm.Copy("ik").Under(parts);
        var fk = arm.Copy("fk").Under(parts);
        var hand = rig.Control($"hand_{side}").PlacedAt(wrist);
        rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").PlacedAt(ik.PolePoint(pole)));
        var above = body.Here;
        foreach (var joint in arm)
        {
            above = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(above);
        }

        var byFk = hand.Switch("fk", atRest);
        rig.Blend(arm).From(ik, byFk.Inverse).From(fk, byFk);
        if (labelled)
            rig.Label($"fk_arm_label_{side}", "FK").ShownBy(byFk).Under(hand);
        return body;
    }
}
