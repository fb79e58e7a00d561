using Condyle;

namespace Newcomers;

/// <summary>The controls of a newcomer while they are added, joint by joint from the root down.</summary>
internal sealed class Body(RigDraft rig, Names names, Joint[] joints, Group systems, Control world)
{
    private readonly Dictionary<int, Node> holders = [];
    private readonly string ikTag = names.TakeTag("ik"), fkTag = names.TakeTag("fk");

    /// <summary>A control that turns one joint; what hangs below the joint goes along.</summary>
    public void AddTurn(int joint, int above) => holders[joint] = Turn(joint, Holder(above));

    /// <summary>Leaves a joint at rest; the controls below it hang under what is above it.</summary>
    public void LeaveStill(int joint, int above) => holders[joint] = Holder(above);

    /// <summary>
    /// Three bones of a limb on two copies: one is turned joint by joint, the other reaches a goal, and a switch blends between them.
    /// The turned one has the limb at rest, since it rests to the last digit even where a limb is as good as straight.
    /// </summary>
    public void AddLimb(Limb limb, int above)
    {
        var (root, middle, tip) = (joints[limb.Root], joints[limb.Middle], joints[limb.Tip]);
        var chain = rig.Chain(root, tip).Without(JointRole.Helper).Without(JointRole.Twist).Bending(limb.BendWhenStraight);
        var holder = Holder(above);
        var parts = rig.Group(names.Take($"{root}_parts_group")).Under(systems).PlacedAt(root);
        rig.Drive(parts).ByMatrix(holder).KeepingOffset();

        var ik = chain.Copy(ikTag).Under(parts);
        var goal = rig.Control(names.Take($"reach_{tip}")).Under(world).PlacedAt(tip).LimitMoves(limb.Length / 4);
        var pole = rig.Control(names.Take($"face_{middle}")).Under(world).PlacedAt(ik.PolePoint(limb.Length / 2)).LimitMoves(limb.Length / 4).Lock(Channels.Turn);
        rig.TwoBone(ik).Reach(goal).Face(pole);

        var fk = chain.Copy(fkTag).Under(parts);
        var amount = goal.Switch("ik");
        foreach (var joint in limb.Bones)
        {
            var control = Turn(joint, holder, fk.Of(joints[joint]));
            if (joint == limb.Root)
                amount.AlsoOn(control);
            holder = control;
        }

        rig.Blend(chain).From(fk, amount.Inverse).From(ik, amount);
        rig.Label(names.Take($"{root}_fk_label"), "FK").ShownBy(amount.Inverse).Under(goal);
        rig.Label(names.Take($"{root}_ik_label"), "IK").ShownBy(amount).Under(goal);
    }

    private Control Turn(int joint, Node holder) => Turn(joint, holder, joints[joint]);

    private Control Turn(int joint, Node holder, Node driven)
    {
        var control = rig.Control(names.Take($"turn_{joints[joint]}")).Under(holder).PlacedAt(joints[joint]).Lock(Channels.Move);
        rig.Drive(driven).ByChannels(control);
        return control;
    }

    /// <summary>What the controls below a joint hang under: its own control, or a group that follows a joint that several things move.</summary>
    private Node Holder(int joint)
    {
        if (joint < 0)
            return world;
        if (holders.TryGetValue(joint, out var holder))
            return holder;
        var group = rig.Group(names.Take($"{joints[joint]}_group")).Under(systems).PlacedAt(joints[joint]);
        rig.Drive(group).ByMatrix(joints[joint]).KeepingOffset();
        return holders[joint] = group;
    }
}
