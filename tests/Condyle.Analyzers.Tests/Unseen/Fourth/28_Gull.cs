using Condyle;
using static System.Linq.Enumerable;
using V = System.Numerics.Vector3;

namespace Unseen.Fourth.R28;

public class Gull : IRigDefinition
{
    public void Define(RigDraft r)
    {
        var p = r.Skeleton("gull").Root("pelvis", at: new V(0, .3f, 0));
        var c = p.Child("chest", at: new(0, .04f, .1f));
        var h = c.Child("neck", at: new(0, .06f, .06f)).Child("head", at: new(0, .07f, .03f));
        var t = p.Child("tail", at: new(0, 0, -.12f));
        var w = r.Control("world");
        var b = r.Control("body").Under(w).PlacedAt(p);
        var bc = r.Control("breast").Under(b).PlacedAt(c);
        r.Drive(p).ByChannels(b);
        r.Drive(c).ByChannels(bc);
        r.Drive(h).ByChannels(r.Control("head").Under(bc).PlacedAt(h).LimitTurn(Axis.Y, -170, 170));
        r.Drive(t).ByChannels(r.Control("tail").Under(b).PlacedAt(t).Lock(Channels.Move));
        foreach (var s in Side.Both) Wing(s.Sign, $"{s}");

        void Wing(float x, string s)
        {
            var sh = c.Child($"shoulder_{s}", at: new(.05f * x, .02f, 0));
            var el = sh.Child($"elbow_{s}", at: new(.18f * x, .02f, -.05f));
            var wr = el.Child($"wrist_{s}", at: new(.2f * x, -.01f, .06f));
            var tips = Range(1, 4).Select(i => wr.Child($"feather_{i}_{s}", at: new(.06f * i * x, 0, -.02f * i))).ToArray();
            var wing = r.Chain(sh, wr);
            var g = r.Group($"wing_{s}_group").PlacedAt(c);
            r.Drive(g).ByMatrix(bc);
            var ik = wing.Copy("ik").Under(g);
            var fk = wing.Copy("fk").Under(g);
            var tip = r.Control($"wing_{s}").Under(w).PlacedAt(wr);
            r.TwoBone(ik).Reach(tip).Face(r.Control($"wing_pole_{s}").Under(bc).PlacedAt(ik.PolePoint(.3f)));
            _ = wing.Aggregate(bc, (up, j) =>
            {
                var k = r.Control($"turn_{j}").Under(up).PlacedAt(j);
                r.Drive(fk.Of(j)).ByChannels(k);
                return k;
            });
            var q = tip.Switch("fk", 1);
            r.Blend(wing).From(fk, q).From(ik, q.Inverse);
            foreach (var f in tips) r.Drive(f).ByChannels(r.Control($"spread_{f}").Under(wr).PlacedAt(f));
        }
    }
}
