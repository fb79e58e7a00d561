using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R50;

public interface IFollowStrategy
{
    void Follow(RigDraft rig, Node target, Node source);
}

public sealed class FollowClosely : IFollowStrategy
{
    public void Follow(RigDraft rig, Node target, Node source) => rig.Drive(target).ByChannels(source);
}

public sealed class FollowApart : IFollowStrategy
{
    public void Follow(RigDraft rig, Node target, Node source) => rig.Drive(target).ByChannels(source).KeepingOffset().WithScale();
}

public sealed class FollowRigidly : IFollowStrategy
{
    public void Follow(RigDraft rig, Node target, Node source) => rig.Drive(target).ByMatrix(source);
}

public sealed class FollowHalf : IFollowStrategy
{
    private readonly Node other;

    public FollowHalf(Node other) => this.other = other;

    public void Follow(RigDraft rig, Node target, Node source) => rig.Blend(target).From(source, 0.5f).From(other, 0.5f);
}

public sealed class Capstan : IRigDefinition
{
    private static readonly IFollowStrategy Closely = new FollowClosely();
    private static readonly IFollowStrategy Apart = new FollowApart();
    private static readonly IFollowStrategy Rigidly = new FollowRigidly();

    public void Define(RigDraft rig)
    {
        var deck = rig.Skeleton("capstan").Root("deck", JointRole.Helper);
        var barrel = deck.Child("barrel", at: new Vector3(0, 0.3f, 0));
        var head = barrel.Child("head", at: new Vector3(0, 0.9f, 0));
        var pawl = deck.Child("pawl", at: new Vector3(0.4f, 0.1f, 0));
        var bars = Enumerable.Range(0, 6).Select(i => head.Child("bar_" + i, at: new Vector3(i % 3 - 1, 0, i / 3 - 0.5f))).ToList();

        var world = rig.Control("world");
        var turn = rig.Control("turn_barrel").Under(world).PlacedAt(barrel);
        turn.Lock(Channels.All);
        turn.Unlock(Channels.TurnY);
        var drop = rig.Control("drop_pawl").Under(world).PlacedAt(pawl).LimitTurn(Axis.Z, 0, 25);
        var barsHolder = rig.Group("bars_group").PlacedAt(head);

        var plan = new List<(IFollowStrategy How, Node Target, Node Source)>
        {
            (Closely, deck, world),
            (Closely, barrel, turn),
            (Apart, head, turn),
            (Rigidly, barsHolder, turn),
            (new FollowHalf(turn), pawl, drop),
        };

        foreach (var bar in bars)
        {
            var push = rig.Control("push_" + bar.Name).Under(barsHolder).PlacedAt(bar);
            plan.Add((Pick(bar.Name), bar, push));
        }

        foreach (var (how, target, source) in plan)
            how.Follow(rig, target, source);
    }

    // the first bar is only a stand-in while the mesh is not there yet
    private static IFollowStrategy Pick(string name) => name.EndsWith('0') ? Rigidly : Closely;
}
