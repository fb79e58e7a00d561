using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R36;

public abstract class Swimmer : IRigDefinition
{
    protected RigDraft Draft { get; private set; } = null!;

    protected Control World { get; private set; }

    protected abstract string Kind { get; }

    protected virtual int SpineLength => 4;

    protected virtual float Step => 0.25f;

    public void Define(RigDraft rig)
    {
        Draft = rig;
        World = rig.Control("world");
        var spine = Spine(rig.Skeleton(Kind));
        var above = World;
        foreach (var joint in spine)
        {
            above = SpineControl(joint, above);
            Move(joint, above);
        }

        Limbs(spine, above);
        Finish();
    }

    protected virtual IReadOnlyList<Joint> Spine(Skeleton skeleton)
    {
        var spine = new List<Joint> { skeleton.Root("tail_root", at: new Vector3(0, 0.2f, -0.6f)) };
        for (int i = 1; i < SpineLength; i++)
            spine.Add(spine[i - 1].Child("spine_" + i, at: new Vector3(0, 0.02f * i, Step)));
        return spine;
    }

    protected virtual Control SpineControl(Joint joint, Control above) => Draft.Control("bend_" + joint.Name).Under(above).PlacedAt(joint);

    protected virtual void Move(Joint joint, Control control) => Draft.Drive(joint).ByChannels(control);

    protected abstract void Limbs(IReadOnlyList<Joint> spine, Control front);

    protected virtual void Finish()
    {
    }
}

public abstract class Flippered : Swimmer
{
    protected virtual float FlipperLength => 0.2f;

    protected sealed override void Limbs(IReadOnlyList<Joint> spine, Control front)
    {
        foreach (var side in Side.Both)
            Flipper(side, spine[spine.Count - 2], front);
    }

    protected virtual void Flipper(Side side, Joint root, Control front)
    {
        var shoulder = root.Child("shoulder_" + side, at: new Vector3(0.18f * side.Sign, -0.05f, 0));
        var elbow = shoulder.Child("elbow_" + side, at: new Vector3(FlipperLength * side.Sign, -0.04f, -0.05f));
        var tip = elbow.Child("flipper_" + side, at: new Vector3(FlipperLength * side.Sign, -0.04f, 0.02f));
        var chain = Draft.Chain(shoulder, tip);

        var holder = Draft.Group("flipper_" + side + "_parts").PlacedAt(root);
        Draft.Drive(holder).ByMatrix(front);

        var ik = chain.Copy("ik").Under(holder);
        var fk = chain.Copy("fk").Under(holder);
        var goal = Draft.Control("flipper_goal_" + side).Under(World).PlacedAt(tip);
        var pole = Draft.Control("flipper_pole_" + side).Under(holder).PlacedAt(ik.PolePoint(FlipperLength));
        Draft.TwoBone(ik).Reach(goal).Face(pole);

        var above = front;
        foreach (var joint in chain)
        {
            above = Draft.Control("turn_" + joint.Name).Under(above).PlacedAt(joint);
            Draft.Drive(fk.Of(joint)).ByChannels(above);
        }

        Mix(chain, ik, fk, goal.Switch("ik", 1f));
    }

    protected virtual void Mix(Chain chain, Copy ik, Copy fk, Switch amount) => Draft.Blend(chain).From(ik, amount).From(fk, amount.Inverse);
}

public sealed class HarbourSeal : Flippered
{
    private int labels;

    protected override string Kind => "harbour_seal";

    protected override int SpineLength => base.SpineLength + 2;

    protected override float FlipperLength => 0.16f;

    protected override Control SpineControl(Joint joint, Control above) =>
        base.SpineControl(joint, above).LimitTurn(Axis.X, -25, 25).LimitTurn(Axis.Y, -30, 30);

    protected override void Mix(Chain chain, Copy ik, Copy fk, Switch amount)
    {
        base.Mix(chain, ik, fk, amount);
        Draft.Label($"flipper_label_{++labels}", "IK").ShownBy(amount);
    }

    protected override void Finish() => Draft.Label("seal_label", $"{labels} flippers").Under(World).ShownBy(1f);
}
