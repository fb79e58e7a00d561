using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R01;

/// <summary>A herring gull that folds its wings by their ends and flaps them by their joints.</summary>
public sealed class HerringGull : IRigDefinition
{
    private static readonly (string Name, float Reach)[] Primaries = [("inner", 0.10f), ("middle", 0.14f), ("outer", 0.17f)];

    public void Define(RigDraft rig)
    {
        var body = rig.Skeleton("herring_gull").Root("body", at: V(0, 0.24f, 0));
        var systems = rig.Group("systems_group");
        var gull = Bind(rig, body, rig.Control("gull").PlacedAt(body));

        var (head, nod) = Row(rig, body, gull, ("neck_lower", V(0, 0.06f, 0.12f)), ("neck_upper", V(0, 0.07f, 0.04f)), ("head", V(0, 0.05f, 0.05f)));
        Turn(rig, head.Child("beak", at: V(0, -0.01f, 0.05f)), nod).LimitTurn(Axis.X, 0, 35).Lock(Channels.TurnY | Channels.TurnZ);
        Turn(rig, body.Child("tail", at: V(0, 0, -0.18f)), gull).LimitTurn(Axis.X, -30, 45);

        foreach (var side in Side.Both)
        {
            Wing(rig, side, body, systems, gull);
            Foot(rig, side, body, gull);
        }
    }

    private static void Wing(RigDraft rig, Side side, Joint body, Group systems, Control gull)
    {
        var shoulder = body.Child($"shoulder_{side}", at: V(side.Sign * 0.05f, 0.05f, 0.06f));
        var elbow = shoulder.Child($"elbow_{side}", at: V(side.Sign * 0.16f, 0.01f, -0.05f));
        var wrist = elbow.Child($"wrist_{side}", at: V(side.Sign * 0.19f, 0, 0.07f));
        var wing = rig.Chain(shoulder, wrist);

        var parts = rig.Group($"wing_{side}_group").Under(systems).PlacedAt(gull);
        rig.Drive(parts).ByMatrix(gull);

        var (ik, fk) = (wing.Copy("ik").Under(parts), wing.Copy("fk").Under(parts));
        var tip = rig.Control($"wing_tip_{side}").Under(gull).PlacedAt(wing.Tip);
        rig.TwoBone(ik).Reach(tip).Face(rig.Control($"wing_pole_{side}").Under(gull).PlacedAt(ik.PolePoint(0.3f)).Lock(Channels.Turn));

        _ = wing.Aggregate(gull, (above, joint) => Follow(rig, fk.Of(joint), rig.Control($"flap_{joint}").Under(above).PlacedAt(joint)));

        var flap = tip.Switch($"fk_{side}", atRest: 1).AlsoOn(gull);
        rig.Blend(wing).From(ik, flap.Inverse).From(fk, flap);
        rig.Label($"wing_label_{side}", "FK").Under(tip).ShownBy(flap);

        foreach (var (name, reach) in Primaries)
            Turn(rig, wrist.Child($"primary_{name}_{side}", at: V(side.Sign * reach, 0, -0.4f * reach)), wrist);
    }

    private static void Foot(RigDraft rig, Side side, Joint body, Control gull) =>
        Row(
            rig,
            body,
            gull,
            ($"hip_{side}", V(side.Sign * 0.03f, -0.08f, -0.02f)),
            ($"shank_{side}", V(0, -0.07f, 0.02f)),
            ($"web_{side}", V(0, -0.08f, 0.01f)));

    private static (Joint Joint, Control Control) Row(RigDraft rig, Joint from, Control above, params (string Name, Vector3 At)[] links) =>
        links.Aggregate(
            (Joint: from, Control: above),
            (last, link) => last.Joint.Child(link.Name, at: link.At) is var next ? (next, Turn(rig, next, last.Control)) : last);

    private static Control Turn(RigDraft rig, Joint joint, Node above) =>
        Bind(rig, joint, rig.Control($"turn_{joint}").Under(above).PlacedAt(joint).Lock(Channels.Move));

    private static Control Bind(RigDraft rig, Joint joint, Control control) => Follow(rig, joint, control);

    private static Control Follow(RigDraft rig, Node node, Control control) => (rig.Drive(node).ByChannels(control), control).control;

    private static Vector3 V(float x, float y, float z) => new(x, y, z);
}
