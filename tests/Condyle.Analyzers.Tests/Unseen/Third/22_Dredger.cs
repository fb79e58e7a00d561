using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R22;

/// <summary>A bucket dredger: a pontoon on spuds, a ladder, and an endless chain of buckets.</summary>
public sealed partial class Dredger : IRigDefinition
{
    private Pontoon pontoon = null!;
    private Ladder ladder = null!;

    public void Define(RigDraft rig)
    {
        pontoon = new Pontoon(this, rig);
        ladder = new Ladder(this, rig);
        BuildCrew(rig);
        OnBuilt(rig);
    }

    partial void OnBuilt(RigDraft rig);

    private partial void BuildCrew(RigDraft rig);

    private static partial Control Attach(RigDraft rig, string name, Node above, Joint joint);
}

// The pontoon.
public sealed partial class Dredger
{
    private sealed class Pontoon
    {
        private readonly List<Spud> spuds = [];

        public Pontoon(Dredger owner, RigDraft rig)
        {
            Joint = rig.Skeleton("dredger").Root("pontoon");
            World = rig.Control("world");
            Handle = Attach(rig, "float", World, Joint);
            foreach (var side in Side.Both)
            {
                spuds.Add(new Spud(this, rig, side, "front", 8));
                spuds.Add(new Spud(this, rig, side, "back", -8));
            }

            _ = owner;
        }

        public Joint Joint { get; }

        public Control World { get; }

        public Control Handle { get; }

        public IReadOnlyList<Spud> Spuds => spuds;

        public sealed class Spud
        {
            public Spud(Pontoon pontoon, RigDraft rig, Side side, string end, float z)
            {
                Joint = pontoon.Joint.Child($"spud_{end}_{side}", at: new Vector3(4 * side.Sign, 2, z));
                Lift = rig.Control($"spud_{end}_lift_{side}").Under(pontoon.Handle).PlacedAt(Joint).Lock(Channels.Turn).LimitMove(Axis.Y, -9, 3);
                var ground = rig.Control($"spud_{end}_ground_{side}").Under(pontoon.World).PlacedAt(Joint);
                Stuck = Lift.Switch("stuck");
                rig.Blend(Joint).From(Lift, Stuck.Inverse).From(ground, Stuck);
            }

            public Joint Joint { get; }

            public Control Lift { get; }

            public Switch Stuck { get; }
        }
    }
}

// The ladder with its buckets.
public sealed partial class Dredger
{
    private sealed partial class Ladder
    {
        private const int Buckets = 24;

        private readonly Dredger owner;
        private readonly Joint joint;

        public Ladder(Dredger owner, RigDraft rig)
        {
            this.owner = owner;
            joint = owner.pontoon.Joint.Child("ladder", at: new Vector3(0, 3, 4));
            Handle = Attach(rig, "ladder_lower", owner.pontoon.Handle, joint).Lock(Channels.Move).LimitTurn(Axis.X, 0, 50);
            Tumbler = Attach(rig, "tumbler_turn", Handle, joint.Child("tumbler", at: new Vector3(0, 0.6f, 0))).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
            FillBuckets(rig);
        }

        public Control Handle { get; }

        public Control Tumbler { get; }

        private partial void FillBuckets(RigDraft rig);
    }

    private sealed partial class Ladder
    {
        private partial void FillBuckets(RigDraft rig)
        {
            var run = rig.Group("bucket_run_group").Under(Handle).PlacedAt(joint);
            for (var i = 0; i < Buckets; i++)
            {
                var bucket = new Bucket(joint, i);
                var ride = rig.Control($"bucket_{i:00}_ride").Under(run).PlacedAt(bucket.Joint);
                rig.Drive(bucket.Joint).ByChannels(ride);
                rig.Drive(bucket.Lip).ByMatrix(rig.Control($"bucket_{i:00}_tip").Under(ride).PlacedAt(bucket.Lip).LimitTurn(Axis.X, -10, 100));
            }

            owner.hints.Add(("buckets", $"{Buckets} BUCKETS"));
        }

        private readonly struct Bucket
        {
            public Bucket(Joint ladder, int index)
            {
                var isUp = index < Buckets / 2;
                var along = (isUp ? index : Buckets - index) * 0.9f;
                Joint = ladder.Child($"bucket_{index:00}", at: new Vector3(0, isUp ? 0.5f : -0.5f, along));
                Lip = Joint.Child($"bucket_{index:00}_lip", JointRole.Helper, new Vector3(0, 0.3f, 0.2f));
            }

            public Joint Joint { get; }

            public Joint Lip { get; }
        }
    }
}

// Crew and small things.
public sealed partial class Dredger
{
    private readonly List<(string Name, string Text)> hints = [];

    private static partial Control Attach(RigDraft rig, string name, Node above, Joint joint)
    {
        var control = rig.Control(name).Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private partial void BuildCrew(RigDraft rig)
    {
        var seat = pontoon.Joint.Child("master_seat", JointRole.Helper, new Vector3(0, 4, -2));
        var sit = Attach(rig, "master", pontoon.Handle, seat);
        foreach (var side in Side.Both)
        {
            var arm = new Arm(rig, seat, side);
            arm.Reach(rig, sit, ladder.Handle);
        }
    }

    partial void OnBuilt(RigDraft rig)
    {
        foreach (var (name, text) in hints)
            rig.Label($"{name}_label", text).Under(pontoon.World);
        for (var i = 0; i < pontoon.Spuds.Count; i++)
            rig.Label($"spud_{i}_label", "STUCK").Under(pontoon.Spuds[i].Lift).ShownBy(pontoon.Spuds[i].Stuck);
        hints.Clear();
    }

    private sealed class Arm(RigDraft rig, Joint seat, Side side)
    {
        private readonly Chain chain = Grow(rig, seat, side);

        public void Reach(RigDraft draft, Control sit, Control lever)
        {
            var holder = draft.Group($"arm_{side}_group").Under(sit).PlacedAt(chain.Root);
            var ik = chain.Copy("ik").Under(holder);
            var hand = draft.Control($"hand_{side}").Under(sit).PlacedAt(chain.Tip);
            var held = draft.Group($"held_{side}_group").Under(sit).PlacedAt(chain.Tip);
            var holds = hand.Switch("lever", 1);
            draft.Blend(held).From(lever, holds).From(hand, holds.Inverse);
            draft.TwoBone(ik).Reach(held).Face(draft.Control($"elbow_pole_{side}").Under(sit).PlacedAt(chain.PolePoint(0.4f)));
            draft.Blend(chain).From(ik, 1);
        }

        private static Chain Grow(RigDraft rig, Joint seat, Side side)
        {
            var shoulder = seat.Child($"shoulder_{side}", at: new Vector3(0.2f * side.Sign, 0.6f, 0));
            var elbow = shoulder.Child($"elbow_{side}", at: new Vector3(0.05f * side.Sign, -0.28f, -0.05f));
            return rig.Chain(shoulder, elbow.Child($"wrist_{side}", at: new Vector3(0, -0.05f, 0.25f)));
        }
    }
}
