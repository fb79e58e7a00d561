using Condyle;

namespace Quayside.Body;

/// <summary>An arm or a leg: a copy that reaches for a goal, a copy that turns at its joints, and a switch that blends the limb from one to the other.</summary>
/// <param name="Turns">The controls that turn its joints, from root to tip.</param>
internal sealed record Limb(IReadOnlyList<Control> Turns)
{
    /// <summary>Builds a limb of two bones. Its root hangs from what is above it; its goal and its pole stand in a space of their own.</summary>
    public static Limb Build(RigDraft rig, Chain bones, LimbNames names, Side side, Group systems, Control space, Control above)
    {
        var root = rig.Control($"{names.Limb}_root_{side}").Under(above).PlacedAt(bones.Root).Lock(Channels.Turn)
            .LimitMove(Axis.X, -0.04f, 0.04f).LimitMove(Axis.Y, -0.04f, 0.04f).LimitMove(Axis.Z, -0.04f, 0.04f);
        var parts = rig.Group($"{names.Limb}_{side}_group").Under(systems).PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);

        var ik = bones.Copy("ik").Under(parts);
        var goal = rig.Control($"{names.Goal}_{side}").Under(space).PlacedAt(bones.Tip);
        var pole = rig.Control($"{names.Pole}_{side}").Under(space).PlacedAt(ik.PolePoint(distance: 0.4f)).Lock(Channels.Turn);
        rig.TwoBone(ik).Reach(goal).Face(pole);

        var fk = bones.Copy("fk").Under(parts);
        var turns = new List<Control>();
        foreach (var joint in bones)
        {
            var control = rig.Control($"turn_{joint.Name}").Under(turns.Count == 0 ? root : turns[^1]).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            turns.Add(control);
        }

        var fkAmount = goal.Switch("fk").AlsoOn(root).AlsoOn(turns[^1]);
        rig.Blend(bones).From(ik, fkAmount.Inverse).From(fk, fkAmount);
        rig.Label($"ik_{names.Limb}_label_{side}", "IK").Under(root).ShownBy(fkAmount.Inverse);
        rig.Label($"fk_{names.Limb}_label_{side}", "FK").Under(root).ShownBy(fkAmount);
        return new Limb(turns);
    }
}

/// <summary>What the parts of a limb are called, without their side.</summary>
/// <param name="Limb">The limb, for instance <c>arm</c>.</param>
/// <param name="Goal">The control that its tip reaches, for instance <c>hand</c>.</param>
/// <param name="Pole">The control that its bend faces, for instance <c>elbow_pole</c>.</param>
internal sealed record LimbNames(string Limb, string Goal, string Pole);
