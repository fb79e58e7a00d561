using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R38;

/// <summary>Every character of the studio stands on this. Override the hooks; don't override <see cref="Define"/>.</summary>
public abstract class StudioRig : IRigDefinition
{
    private readonly Dictionary<string, Control> controls = [];

    protected RigDraft Rig { get; private set; } = null!;

    protected Skeleton Skeleton { get; private set; }

    protected Joint Base { get; private set; }

    protected Control World { get; private set; }

    protected Group Systems { get; private set; }

    protected abstract string CharacterName { get; }

    protected virtual float Size => 1f;

    public void Define(RigDraft rig)
    {
        Rig = rig;
        controls.Clear();
        Skeleton = rig.Skeleton(CharacterName);
        Base = Skeleton.Root("base", JointRole.Helper);
        World = rig.Control("world");
        Systems = rig.Group("systems_group");
        rig.Drive(Base).ByChannels(World);

        OnBodyJoints();
        OnBody();
        foreach (var side in Side.Both)
            OnSide(side);
        OnExtras();
    }

    protected abstract void OnBodyJoints();

    protected abstract void OnBody();

    protected virtual void OnSide(Side side)
    {
    }

    protected virtual void OnExtras()
    {
    }

    protected Vector3 At(float x, float y, float z) => new Vector3(x, y, z) * Size;

    protected Control Handle(Joint joint, Node above, string prefix = "turn")
    {
        var control = Rig.Control($"{prefix}_{joint.Name}").Under(above).PlacedAt(joint);
        Rig.Drive(joint).ByChannels(control);
        controls[joint.Name] = control;
        return control;
    }

    protected Control HandleOf(Joint joint) => controls[joint.Name];
}

/// <summary>Two arms, two legs, one head: what most of our people have.</summary>
public abstract class StudioBiped : StudioRig
{
    protected Joint Pelvis { get; private set; }

    protected Joint Chest { get; private set; }

    protected Joint Head { get; private set; }

    protected override void OnBodyJoints()
    {
        Pelvis = Base.Child("pelvis", at: At(0f, 0.95f, 0f));
        Chest = Pelvis.Child("waist", at: At(0f, 0.15f, 0f)).Child("chest", at: At(0f, 0.2f, 0f));
        Head = Chest.Child("neck", at: At(0f, 0.22f, 0f)).Child("head", at: At(0f, 0.08f, 0f));
    }

    protected override void OnBody()
    {
        Node above = World;
        foreach (var joint in Rig.Chain(Pelvis, Head))
            above = Handle(joint, above);
    }

    protected override void OnSide(Side side)
    {
        var arm = Segments(Chest, side, ("shoulder", At(0.18f * side.Sign, 0.15f, 0f)), ("elbow", At(0.26f * side.Sign, 0f, -0.02f)), ("wrist", At(0.25f * side.Sign, 0f, 0.02f)));
        var leg = Segments(Pelvis, side, ("hip", At(0.1f * side.Sign, -0.05f, 0f)), ("knee", At(0f, -0.43f, 0.02f)), ("ankle", At(0f, -0.42f, -0.02f)));
        Arm(arm, side);
        Leg(leg, side);
    }

    protected virtual void Arm(Chain arm, Side side) => Switched(arm, "hand", side, HandleOf(Chest), 0f);

    protected virtual void Leg(Chain leg, Side side) => Switched(leg, "foot", side, HandleOf(Pelvis), 0f);

    protected Control Switched(Chain limb, string name, Side side, Control above, float fkAtRest)
    {
        var holder = Rig.Group($"{name}_{side}_group").Under(Systems);
        Rig.Drive(holder).ByMatrix(above);
        var ik = limb.Copy("ik").Under(holder);
        var fk = limb.Copy("fk").Under(holder);
        var goal = Rig.Control($"{name}_{side}").Under(World).PlacedAt(limb.Tip);
        var pole = Rig.Control($"{name}_pole_{side}").Under(World).PlacedAt(ik.PolePoint(0.4f * Size));
        Rig.TwoBone(ik).Reach(goal).Face(pole);
        Node last = above;
        foreach (var joint in limb)
        {
            var turn = Rig.Control($"turn_{joint}").Under(last).PlacedAt(joint);
            Rig.Drive(fk.Of(joint)).ByChannels(turn);
            last = turn;
        }

        var amount = goal.Switch("fk", fkAtRest);
        Rig.Blend(limb).From(ik, amount.Inverse).From(fk, amount);
        return goal;
    }

    private Chain Segments(Joint above, Side side, params (string Name, Vector3 At)[] parts)
    {
        var first = above.Child($"{parts[0].Name}_{side}", at: parts[0].At);
        var last = first;
        for (var i = 1; i < parts.Length; i++)
            last = last.Child($"{parts[i].Name}_{side}", at: parts[i].At);
        return Rig.Chain(first, last);
    }
}

public sealed class HardHatDiver : StudioBiped
{
    private Joint helmet;
    private Joint faceplate;

    protected override string CharacterName => "hard_hat_diver";

    // The suit is bulky.
    protected override float Size => 1.1f;

    protected override void OnBodyJoints()
    {
        base.OnBodyJoints();
        helmet = Head.Child("helmet", at: At(0f, 0.05f, 0f));
        faceplate = helmet.Child("faceplate", at: At(0f, 0.02f, 0.16f));
    }

    protected override void Leg(Chain leg, Side side)
    {
        base.Leg(leg, side);
        var boot = leg.Tip.Child($"lead_boot_{side}", at: At(0f, -0.08f, 0.1f));
        Handle(boot, leg.Tip, "stamp");
    }

    protected override void Arm(Chain arm, Side side)
    {
        if (side == Side.Left)
        {
            base.Arm(arm, side);
            return;
        }

        // The right hand holds the lifeline: it starts in FK.
        Switched(arm, "hand", side, HandleOf(Chest), fkAtRest: 1f);
    }

    protected override void OnExtras()
    {
        var hat = Handle(helmet, HandleOf(Head));
        Handle(faceplate, hat).LimitTurn(Axis.Y, 0f, 110f);

        var last = helmet;
        Node above = hat;
        for (var i = 0; i < 14; i++)
        {
            last = last.Child($"hose_{i}", at: At(0f, i < 3 ? -0.05f : 0.2f, i < 3 ? -0.12f : -0.02f));
            above = Handle(last, above, "sway");
        }
    }
}
