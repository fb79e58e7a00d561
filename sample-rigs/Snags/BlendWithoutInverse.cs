using System.Numerics;
using Condyle;

namespace Snags;

/// <summary>A pair of boat davits whose arms float between IK and FK and never quite land on either. CDY2001.</summary>
public sealed class BlendWithoutInverse : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var rail = rig.Skeleton("davits").Root("rail");
        var systems = rig.Group("systems_group");
        var deck = rig.Control("deck").PlacedAt(rail);
        rig.Drive(rail).ByChannels(deck);
        foreach (var side in Side.Both)
            Davit(rig, rail, side, systems, deck);
    }

    private static void Davit(RigDraft rig, Joint rail, Side side, Group systems, Control deck)
    {
        var post = rail.Child($"post_{side}", at: new Vector3(2 * side.Sign, 0, 0));
        var knuckle = post.Child($"knuckle_{side}", at: new Vector3(0, 1.6f, -0.3f));
        var head = knuckle.Child($"head_{side}", at: new Vector3(0, 1.2f, 0.5f));
        var arm = rig.Chain(post, head);

        var parts = rig.Group($"davit_{side}_group").Under(systems).PlacedAt(deck);
        rig.Drive(parts).ByMatrix(deck);

        var ik = arm.Copy("ik").Under(parts);
        var fall = rig.Control($"fall_{side}").Under(deck).PlacedAt(arm.Tip);
        var pole = rig.Control($"knuckle_pole_{side}").Under(deck).PlacedAt(ik.PolePoint(distance: 1));
        rig.TwoBone(ik).Reach(fall).Face(pole);

        var fk = arm.Copy("fk").Under(parts);
        var above = deck;
        foreach (var joint in arm)
        {
            var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            above = control;
        }

        Share(rig, arm, ik, fk, fall.Switch("fk"));
    }

    // The slip: the switch weights both copies, so IK and FK come and go together. Halfway the davit is where it should be by luck;
    // at either end it isn't, and the animator who keys a clean FK swing finds the boat hanging somewhere else.
    private static void Share(RigDraft rig, Chain arm, Copy ik, Copy fk, Switch amount) =>
        rig.Blend(arm).From(ik, amount).From(fk, amount);
}
