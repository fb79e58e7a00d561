using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R49;

public sealed class Ferryman : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var count = 0;
        var world = rig.Control("world");
        Func<string, string> numbered = name => $"{name}_{++count:00}";
        Func<Joint, Func<string, float, float, float, Joint>> below = joint => (name, x, y, z) => joint.Child(name, at: new(x, y, z));

        var pelvis = rig.Skeleton("ferryman").Root("pelvis", at: new(0, 0.96f, 0));
        var chest = below(below(pelvis)("waist", 0, 0.14f, 0))("chest", 0, 0.24f, 0);
        var boat = rig.Control("boat").Under(world);

        var stack = new Stack<Control>([boat]);
        IDisposable Inside(Joint joint)
        {
            var control = rig.Control($"turn_{joint}").Under(stack.Peek()).PlacedAt(joint);
            rig.Drive(joint).ByChannels(control);
            stack.Push(control);
            return new Leaving(() => stack.Pop());
        }

        var oars = new List<Action<Control>>();
        using (Inside(pelvis))
        {
            Both(side => Limb("leg", side, pelvis, [("hip", 0.1f, -0.06f, 0), ("knee", 0, -0.43f, 0.03f), ("ankle", 0, -0.41f, -0.03f)]));
            using (Inside(chest))
            {
                Both(side =>
                {
                    var hand = Limb("arm", side, chest, [("shoulder", 0.2f, 0.18f, 0), ("elbow", 0.27f, 0, -0.03f), ("wrist", 0.25f, 0, 0.03f)]);
                    oars.Add(oar => hand.Under(oar));
                });
                using var _ = Inside(below(chest)("head", 0, 0.28f, 0));
            }
        }

        var grip = rig.Control("oar").Under(boat).PlacedAt(chest);
        oars.ForEach(hold => hold(grip));

        void Both(Action<Side> what)
        {
            foreach (var side in Side.Both)
                what(side);
        }

        Control Limb(string name, Side side, Joint from, (string Name, float X, float Y, float Z)[] steps)
        {
            var anchor = stack.Peek();
            var joint = from;
            Joint? first = null;
            foreach (var (part, x, y, z) in steps)
            {
                joint = below(joint)($"{part}_{side}", x * side.Sign, y, z);
                first ??= joint;
            }

            var chain = rig.Chain(first!.Value, joint);
            var group = rig.Group($"{name}_{side}_group").PlacedAt(anchor);
            rig.Drive(group).ByMatrix(anchor);
            Copy Make(string tag) => chain.Copy(tag).Under(group);
            var (ik, fk) = (Make("ik"), Make("fk"));

            var goal = rig.Control($"{name}_goal_{side}").Under(boat).PlacedAt(chain.Tip);
            rig.TwoBone(ik).Reach(goal).Face(Pole());

            void Turn(int index, Node above)
            {
                if (index == chain.Count)
                    return;
                var control = rig.Control($"turn_{chain[index]}").Under(above).PlacedAt(chain[index]);
                rig.Drive(fk.Of(chain[index])).ByChannels(control);
                Turn(index + 1, control);
            }

            Turn(0, anchor);
            var fkAmount = goal.Switch("fk");
            rig.Blend(chain).From(ik, fkAmount.Inverse).From(fk, fkAmount);
            rig.Label(numbered("label"), name.ToUpperInvariant()).ShownBy(fkAmount);
            return goal;

            Control Pole() => rig.Control($"{name}_pole_{side}").Under(anchor).PlacedAt(ik.PolePoint(0.45f));
        }
    }

    private sealed class Leaving(Action how) : IDisposable
    {
        public void Dispose() => how();
    }
}
