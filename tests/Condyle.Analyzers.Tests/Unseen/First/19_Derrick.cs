using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R19;

/// <summary>A ship's derrick as a tree of spars and blocks, visited once for joints, once for controls and once for a list of gear.</summary>
public sealed class Derrick : IRigDefinition
{
    private static readonly Gear Plan = new Assembly(
        "mast",
        new Vector3(0, 2, 0),
        new Spar("boom", new Vector3(0, 0.3f, 0.4f), 7.5f, new Block("head_block", new Vector3(0, 0, 7.5f), sheaves: 2)),
        new Assembly(
            "crosstree",
            new Vector3(0, 6, 0),
            new Block("topping_block", new Vector3(0, 0, 0.3f), sheaves: 1),
            new Guy("guy_left", new Vector3(0.8f, 0, 0)),
            new Guy("guy_right", new Vector3(-0.8f, 0, 0))));

    public void Define(RigDraft rig)
    {
        var joints = new Dictionary<Gear, Joint>();
        Plan.Accept(new JointVisitor(rig.Skeleton("derrick"), joints));
        Plan.Accept(new ControlVisitor(rig, joints));

        var tally = new TallyVisitor();
        Plan.Accept(tally);
        rig.Label("derrick_label", tally.Report).Under(joints[Plan]);
    }

    private interface IVisitor
    {
        void Visit(Assembly assembly);
        void Visit(Spar spar);
        void Visit(Block block);
        void Visit(Guy guy);
    }

    private abstract class Gear(string name, Vector3 at)
    {
        private readonly List<Gear> children = [];

        public string Name { get; } = name;
        public Vector3 At { get; } = at;
        public Gear? Parent { get; private set; }
        public IReadOnlyList<Gear> Children => children;

        public abstract void Accept(IVisitor visitor);

        protected void Adopt(IEnumerable<Gear> gear)
        {
            foreach (var each in gear)
            {
                each.Parent = this;
                children.Add(each);
            }
        }
    }

    private sealed class Assembly : Gear
    {
        public Assembly(string name, Vector3 at, params Gear[] gear)
            : base(name, at) => Adopt(gear);

        public override void Accept(IVisitor visitor) => visitor.Visit(this);
    }

    private sealed class Spar : Gear
    {
        public Spar(string name, Vector3 at, float length, Gear head)
            : base(name, at)
        {
            Length = length;
            Adopt([head]);
        }

        public float Length { get; }

        public override void Accept(IVisitor visitor) => visitor.Visit(this);
    }

    private sealed class Block(string name, Vector3 at, int sheaves) : Gear(name, at)
    {
        public int Sheaves => sheaves;
        public override void Accept(IVisitor visitor) => visitor.Visit(this);
    }

    private sealed class Guy(string name, Vector3 at) : Gear(name, at)
    {
        public override void Accept(IVisitor visitor) => visitor.Visit(this);
    }

    private abstract class TreeVisitor : IVisitor
    {
        public virtual void Visit(Assembly assembly) => Enter(assembly);
        public virtual void Visit(Spar spar) => Enter(spar);
        public virtual void Visit(Block block) => Enter(block);
        public virtual void Visit(Guy guy) => Enter(guy);

        protected virtual void Enter(Gear gear)
        {
            foreach (var child in gear.Children)
                child.Accept(this);
        }
    }

    private sealed class JointVisitor(Skeleton skeleton, Dictionary<Gear, Joint> joints) : TreeVisitor
    {
        protected override void Enter(Gear gear)
        {
            joints[gear] = gear.Parent is null ? skeleton.Root(gear.Name, at: gear.At) : joints[gear.Parent].Child(gear.Name, at: gear.At);
            base.Enter(gear);
        }
    }

    private sealed class ControlVisitor(RigDraft rig, Dictionary<Gear, Joint> joints) : TreeVisitor
    {
        private readonly Stack<Control> above = new();
        private Group? tackle;

        public override void Visit(Block block)
        {
            var holder = tackle ??= rig.Group("tackle_group").Under(above.Last());
            for (var sheave = 0; sheave < block.Sheaves; sheave++)
            {
                var joint = joints[block].Child($"{block.Name}_sheave_{sheave}", at: new Vector3(0.06f * sheave, 0, 0));
                rig.Drive(joint).ByMatrix(rig.Control($"spin_{joint}").Under(holder).PlacedAt(joint).Lock(Channels.Move));
            }

            base.Visit(block);
        }

        protected override void Enter(Gear gear)
        {
            var control = rig.Control($"{gear.GetType().Name.ToLowerInvariant()}_{gear.Name}").PlacedAt(joints[gear]);
            if (above.TryPeek(out var parent))
                control.Under(parent);
            rig.Drive(joints[gear]).ByChannels(gear is Spar { Length: > 5 } ? control.LimitTurn(Axis.X, -60, 10) : control);
            above.Push(control);
            base.Enter(gear);
            above.Pop();
        }
    }

    private sealed class TallyVisitor : TreeVisitor
    {
        private readonly SortedDictionary<string, int> counts = new(StringComparer.Ordinal);

        public string Report => string.Join(", ", counts.Select(pair => $"{pair.Value} {pair.Key}"));

        protected override void Enter(Gear gear)
        {
            counts[gear.GetType().Name] = counts.GetValueOrDefault(gear.GetType().Name) + 1;
            base.Enter(gear);
        }
    }
}
