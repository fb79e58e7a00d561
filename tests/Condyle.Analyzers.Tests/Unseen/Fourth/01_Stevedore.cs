using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R01;

public sealed class Stevedore : IRigDefinition
{
    static Vector3 V(float x, float y, float z = 0) => new(x, y, z);

    public void Define(RigDraft r)
    {
        var sk = r.Skeleton("stevedore");
        var pelvis = sk.Root("pelvis", at: V(0, 1.02f));
        var chest = pelvis.Child("waist", at: V(0, .14f)).Child("chest", at: V(0, .22f, -.01f));
        var head = chest.Child("neck", at: V(0, .24f)).Child("head", at: V(0, .1f, .02f));
        Group sys = r.Group("systems_group");
        Control world = r.Control("world"), hips = r.Control("pelvis_main").Under(world).PlacedAt(pelvis), ribs = r.Control("chest_main").Under(hips).PlacedAt(chest);
        r.Drive(pelvis).ByChannels(hips);
        r.Drive(chest).ByChannels(ribs);
        r.Drive(head).ByChannels(r.Control("head_main").Under(ribs).PlacedAt(head).LimitTurn(Axis.Y, -75, 75).Lock(Channels.Move));

        foreach (var s in Side.Both)
        {
            var x = s.Sign;
            var sh = chest.Child($"collar_{s}", at: V(.04f * x, .18f)).Child($"shoulder_{s}", at: V(.15f * x, 0));
            var el = sh.Child($"elbow_{s}", at: V(.3f * x, 0, -.01f));
            el.Child($"elbow_twist_{s}", JointRole.Twist, V(.13f * x, 0));
            var wr = el.Child($"wrist_{s}", at: V(.26f * x, 0, .01f));
            Limb("arm", s, r.Chain(sh, wr), ribs, .5f, 0);

            var hip = pelvis.Child($"hip_{s}", at: V(.1f * x, -.06f));
            var an = hip.Child($"knee_{s}", at: V(0, -.44f, .02f)).Child($"ankle_{s}", at: V(0, -.43f, -.02f));
            an.Child($"toes_{s}", at: V(0, -.07f, .14f));
            Limb("leg", s, r.Chain(hip, an), hips, .6f, 0);
        }

        void Limb(string n, Side s, Chain c, Control above, float far, float rest)
        {
            var g = r.Group($"{n}_{s}_group").Under(sys).PlacedAt(c.Root);
            r.Drive(g).ByMatrix(r.Control($"{n}_root_{s}").Under(above).PlacedAt(c.Root));
            Copy ik = c.Copy("ik").Under(g), fk = c.Copy("fk").Under(g);
            var goal = r.Control($"{n}_goal_{s}").Under(world).PlacedAt(c.Tip);
            r.TwoBone(ik).Reach(goal).Face(r.Control($"{n}_pole_{s}").Under(world).PlacedAt(ik.PolePoint(far)));
            Node up = g;
            foreach (var j in c) { var t = r.Control($"turn_{j}").Under(up).PlacedAt(j); r.Drive(fk.Of(j)).ByChannels(t); up = t; }
            var w = goal.Switch("fk", rest);
            r.Blend(c).From(ik, w.Inverse).From(fk, w);
            r.Label($"ik_{n}_label_{s}", "IK").Under(goal).ShownBy(w.Inverse);
            r.Label($"fk_{n}_label_{s}", "FK").Under(goal).ShownBy(w);
        }
    }
}
