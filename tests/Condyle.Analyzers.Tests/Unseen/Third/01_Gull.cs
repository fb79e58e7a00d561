using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R01;

public sealed class Gull : IRigDefinition
{
    public void Define(RigDraft r)
    {
        var sk = r.Skeleton("gull");
        var pelvis = sk.Root("pelvis", at: V(0, .19f, 0));
        var chest = pelvis.Child("chest", at: V(0, .03f, .09f));
        var neck = chest.Child("neck", at: V(0, .05f, .05f));
        var head = neck.Child("head", at: V(0, .06f, .03f));
        var beak = head.Child("beak_lower", at: V(0, -.005f, .03f));
        var tail = pelvis.Child("tail", at: V(0, 0, -.08f));
        var fan = Enumerable.Range(0, 5).Select(i => tail.Child($"fan_{i}", at: V((i - 2) * .012f, 0, -.05f))).ToArray();

        var top = r.Group("gull_group");
        var world = r.Control("world").Under(top);
        var body = On("body", world, pelvis);
        var breast = On("breast", body, chest);
        var look = On("look", breast, neck);
        var nod = On("nod", look, head);
        On("caw", nod, beak).Lock(Channels.Move).LimitTurn(Axis.X, 0, 35);
        var rump = On("rump", body, tail);
        foreach (var f in fan) On($"{f}_turn", rump, f).Lock(Channels.Move);

        foreach (var side in Side.Both)
        {
            var x = side.Sign;
            var sh = chest.Child($"shoulder_{side}", at: V(.03f * x, .02f, 0));
            var el = sh.Child($"elbow_{side}", at: V(.13f * x, 0, -.03f));
            var wr = el.Child($"wrist_{side}", at: V(.15f * x, 0, .03f));
            var tip = wr.Child($"primaries_{side}", at: V(.18f * x, 0, -.02f));
            var hip = pelvis.Child($"hip_{side}", at: V(.025f * x, -.02f, 0));
            var knee = hip.Child($"knee_{side}", at: V(0, -.06f, .02f));
            var ankle = knee.Child($"ankle_{side}", at: V(0, -.09f, -.03f));
            var web = ankle.Child($"web_{side}", at: V(0, -.01f, .03f));

            var wing = r.Chain(sh, wr);
            var g = r.Group($"wing_{side}_group").Under(top).PlacedAt(sh);
            r.Drive(g).ByMatrix(breast).KeepingOffset();

            var fk = wing.Copy("fk").Under(g);
            var flap = wing.Aggregate(breast, (up, j) =>
            {
                var c = On($"flap_{j.Name}", up, j).Lock(Channels.Move);
                r.Drive(fk.Of(j)).ByChannels(c);
                return c;
            });

            var ik = wing.Copy("ik").Under(g);
            var reach = On($"reach_{side}", world, wr);
            r.TwoBone(ik).Reach(reach).Face(r.Control($"wing_pole_{side}").Under(body).PlacedAt(wing.PolePoint(.2f)));

            var perch = reach.Switch("ik").AlsoOn(breast);
            r.Blend(wing).From(fk, perch.Inverse).From(ik, perch);
            r.Label($"flap_{side}_label", "FLAP").Under(flap).ShownBy(perch.Inverse);
            r.Label($"perch_{side}_label", "PERCH").Under(reach).ShownBy(perch);
            On($"feather_{side}", flap, tip).Lock(Channels.Move);

            var leg = r.Chain(hip, ankle).Bending(-Vector3.UnitZ);
            var walk = leg.Copy("ik").Under(r.Group($"leg_{side}_group").Under(body).PlacedAt(hip));
            var foot = On($"foot_{side}", world, ankle);
            r.TwoBone(walk).Reach(foot).Face(r.Control($"knee_pole_{side}").Under(foot).PlacedAt(leg.PolePoint(.1f)));
            r.Blend(leg).From(walk, 1);
            On($"toes_{side}", foot, web).LimitTurn(Axis.X, -60, 40);
        }

        Control On(string n, Node up, Joint at)
        {
            var c = r.Control(n).Under(up).PlacedAt(at);
            if (!n.StartsWith("reach") && !n.StartsWith("foot") && !n.StartsWith("flap")) r.Drive(at).ByChannels(c);
            return c;
        }

        static Vector3 V(float x, float y, float z) => new(x, y, z);
    }
}
