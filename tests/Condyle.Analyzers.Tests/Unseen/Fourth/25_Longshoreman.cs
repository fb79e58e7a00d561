using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R25;

public sealed class Longshoreman : IRigDefinition
{
    private enum State { Start, Spine, LeftArm, RightArm, Reins, Done }

    private State state;
    private RigDraft rig = null!;
    private Joint chest;
    private Control ribs, world;
    private readonly Stack<Control> turning = new();
    private readonly List<Switch> switches = [];

    public void Define(RigDraft rig)
    {
        this.rig = rig;
        state = State.Start;
        turning.Clear();
        switches.Clear();
        while (state != State.Done)
        {
            Step();
            state = Next(state, switches.Count);
        }
    }

    private static State Next(State state, int arms) => (state, arms) switch
    {
        (State.Start, _) => State.Spine,
        (State.Spine, 0) => State.LeftArm,
        (State.LeftArm, 1) => State.RightArm,
        (State.RightArm, 2) => State.Reins,
        (State.Reins, _) => State.Done,
        var (was, n) => throw new InvalidOperationException($"{was} with {n} arms"),
    };

    private void Step()
    {
        switch (state)
        {
            case State.Start:
                world = rig.Control("world");
                break;
            case State.Spine:
                var pelvis = rig.Skeleton("longshoreman").Root("pelvis", at: new Vector3(0, 1.05f, 0));
                var hips = rig.Control("pelvis_main").Under(world).PlacedAt(pelvis);
                chest = pelvis.Child("chest", at: new Vector3(0, 0.38f, -0.02f));
                ribs = rig.Control("chest_main").Under(hips).PlacedAt(chest);
                rig.Drive(pelvis).ByChannels(hips);
                rig.Drive(chest).ByChannels(ribs);
                goto default;
            case State.LeftArm or State.RightArm:
                var side = state == State.LeftArm ? Side.Left : Side.Right;
                switches.Add(Arm(side));
                break;
            case State.Reins when switches is [var left, var right]:
                var both = left * right;
                rig.Label("arms_fk_label", "BOTH FK").ShownBy(both).Under(ribs);
                Rope(left, right);
                break;
            default:
                turning.Push(ribs);
                break;
        }
    }

    private Switch Arm(Side side)
    {
        var shoulder = chest.Child($"shoulder_{side}", at: new Vector3(0.19f * side.Sign, 0.15f, 0));
        var elbow = shoulder.Child($"elbow_{side}", at: new Vector3(0.1f * side.Sign, -0.28f, -0.04f));
        var wrist = elbow.Child($"wrist_{side}", at: new Vector3(0.05f * side.Sign, -0.24f, 0.08f));
        var arm = rig.Chain(shoulder, wrist);
        var parts = rig.Group($"arm_{side}_group").PlacedAt(shoulder);
        rig.Drive(parts).ByMatrix(ribs).KeepingOffset();
        var ik = arm.Copy("ik").Under(parts);
        var fk = arm.Copy("fk").Under(parts);
        var hand = rig.Control($"hand_{side}").Under(world).PlacedAt(wrist);
        var pole = rig.Control($"elbow_pole_{side}").Under(world).PlacedAt(ik.PolePoint(distance: 0.4f));
        rig.TwoBone(ik).Reach(hand).Face(pole);
        do
        {
            var joint = arm[turning.Count - 1];
            turning.Push(rig.Control($"turn_{joint}").Under(turning.Peek()).PlacedAt(joint));
            rig.Drive(fk.Of(joint)).ByChannels(turning.Peek());
        }
        while (turning.Count <= arm.Count);
        while (turning.Count > 1)
            turning.Pop();

        var fkAmount = hand.Switch("fk").AlsoOn(ribs);
        // wrong way round: the label below says so too
        rig.Blend(arm).From(ik, fkAmount).From(fk, fkAmount);
        rig.Label($"fk_arm_label_{side}", "FK").ShownBy(fkAmount).Under(hand);
        return fkAmount;
    }

    private void Rope(Switch left, Switch right)
    {
        var rope = chest.Child("rope", JointRole.Helper, new Vector3(0, -0.3f, 0.3f));
        var on = new Node[] { ribs, world };
        rig.Blend(rope).From(on[0], left * right.Inverse).From(on[1], (left * right.Inverse).Inverse);
    }
}
