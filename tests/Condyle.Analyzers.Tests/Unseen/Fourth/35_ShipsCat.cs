using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R35;

internal static class CatWords
{
    extension(RigDraft rig)
    {
        public Control Handle(string name, Node at, Node under) => rig.Control(name).Under(under).PlacedAt(at);

        public Control Puppet(Joint joint, Node under)
        {
            var control = rig.Handle($"turn_{joint}", joint, under);
            rig.Drive(joint).ByChannels(control);
            return control;
        }
    }

    extension(Side side)
    {
        public Vector3 Mirror(Vector3 point) => point with { X = point.X * side.Sign };

        public bool IsLeft => side == Side.Left;
    }

    extension(Joint joint)
    {
        public Joint Down(string name, float length, float z = 0) => joint.Child(name, at: new Vector3(0, -length, z));
    }

    extension(Chain chain)
    {
        public Joint Middle => chain[chain.Count / 2];

        public (Copy Ik, Copy Fk) Copies(Node under) => (chain.Copy("ik").Under(under), chain.Copy("fk").Under(under));
    }

    extension(Switch self)
    {
        public (Weight On, Weight Off) Both => (self, self.Inverse);
    }

    extension<T>(IEnumerable<T> items)
    {
        public IEnumerable<(T Above, T Below)> Steps => items.Zip(items.Skip(1));
    }
}

public class ShipsCat : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("ships_cat").Root("pelvis", at: new(0, 0.25f, -0.12f));
        var chest = pelvis.Child("chest", at: new(0, 0.01f, 0.22f));
        var world = rig.Control("world");
        var hips = rig.Puppet(pelvis, world);
        var breast = rig.Puppet(chest, hips);
        rig.Puppet(chest.Child("head", at: new(0, 0.07f, 0.09f)), breast);

        var tail = Enumerable.Range(0, 5).Aggregate(new List<Joint> { pelvis }, (list, i) =>
        {
            list.Add(list[^1].Child($"tail_{i}", at: new(0, 0.01f, -0.06f)));
            return list;
        });
        foreach (var (above, below) in tail.Steps)
            rig.Puppet(below, above);

        foreach (var side in Side.Both)
        {
            Leg("hind", pelvis.Child($"hip_{side}", at: side.Mirror(new(0.04f, 0, 0))), 0.02f, hips);
            Leg("fore", chest.Child($"shoulder_{side}", at: side.Mirror(new(0.035f, 0, 0))), -0.02f, breast);

            void Leg(string which, Joint top, float z, Control above)
            {
                var paw = top.Down($"{which}_bend_{side}", 0.11f, z).Down($"{which}_paw_{side}", 0.11f, -z);
                var leg = rig.Chain(top, paw);
                var holder = rig.Group($"{which}_{side}_group").PlacedAt(top);
                rig.Drive(holder).ByMatrix(above).KeepingOffset();
                var (ik, fk) = leg.Copies(holder);
                var goal = rig.Handle($"{which}_goal_{side}", paw, world);
                rig.TwoBone(ik).Reach(goal).Face(rig.Control($"{which}_pole_{side}").Under(goal).PlacedAt(ik.PolePoint(0.15f)));
                Node parent = above;
                foreach (var joint in leg)
                {
                    var turn = rig.Handle($"turn_{joint}", joint, parent);
                    if (joint == leg.Middle)
                        turn.LimitTurn(Axis.X, side.IsLeft ? 0 : -150, side.IsLeft ? 150 : 0);
                    rig.Drive(fk.Of(joint)).ByChannels(turn);
                    parent = turn;
                }

                var (on, off) = goal.Switch("fk").Both;
                rig.Blend(leg).From(fk, on).From(ik, off);
            }
        }
    }
}
