using System;
using System.Linq;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Text;
using Condyle;

namespace Unseen.First.R48;

/// <summary>The pelican that the fishmonger feeds. Limbs are types with static members; names are made by an interpolation handler of our own.</summary>
public sealed partial class OldPelican : IRigDefinition
{
    public partial void Define(RigDraft rig);
}

public partial class OldPelican
{
    public partial void Define(RigDraft rig)
    {
        Bird bird = new PouchedBird(rig, "pelican") { PouchSize = 0.32f };
        var body = bird.Grow();
        foreach (var side in Side.Both)
        {
            bird.Attach<Wing>(side, body);
            bird.Attach<Foot>(side, body);
        }

        if (bird is PouchedBird { PouchSize: > 0.3f } pouched)
            pouched.Pouch(body);
    }
}

/// <summary>What kind of limb it is, said by a type alone.</summary>
internal interface ILimb<TSelf>
    where TSelf : ILimb<TSelf>
{
    static abstract string Stem { get; }

    static abstract ReadOnlySpan<Vector3> Bones { get; }

    static virtual bool HasTurns => false;

    static virtual Channels Locked => Channels.None;

    static string NameOf(Index index) => index switch
    {
        { IsFromEnd: true, Value: 1 } => $"{TSelf.Stem}_tip",
        { Value: 0 } => $"{TSelf.Stem}_root",
        { Value: var n } => $"{TSelf.Stem}_mid{n}",
    };
}

internal readonly struct Wing : ILimb<Wing>
{
    public static string Stem => "wing";

    public static ReadOnlySpan<Vector3> Bones => new Vector3[] { new(0.12f, 0.08f, 0), new(0.5f, 0.12f, -0.18f), new(0.65f, -0.05f, 0.2f) };

    public static bool HasTurns => true;
}

internal readonly struct Foot : ILimb<Foot>
{
    public static string Stem => "foot";

    public static ReadOnlySpan<Vector3> Bones => new Vector3[] { new(0.08f, -0.12f, 0), new(0.01f, -0.12f, 0.05f), new(0, -0.14f, -0.05f) };

    public static Channels Locked => Channels.TurnY | Channels.TurnZ;
}

internal record Torso(Joint Joint, Control Steer);

internal sealed record LongTorso(Joint Joint, Control Steer, Control Head, Joint HeadJoint) : Torso(Joint, Steer);

internal abstract class Bird(RigDraft rig, string name)
{
    private readonly Group holder = rig.Group(Snake($"{name} systems group"));

    protected RigDraft Rig => rig;

    protected string Name => name;

    public abstract LongTorso Grow();

    public void Attach<TLimb>(Side side, Torso torso)
        where TLimb : struct, ILimb<TLimb>
    {
        Span<Joint> joints = new Joint[TLimb.Bones.Length];
        var above = torso.Joint;
        foreach (ref var joint in joints)
        {
            var i = above == torso.Joint ? 0 : joints.IndexOf(above) + 1;
            var place = TLimb.Bones[i] * new Vector3(side.Sign, 1, 1);
            joint = above = above.Child(Snake($"{ILimb<TLimb>.NameOf(i == joints.Length - 1 ? ^1 : i)} {side}"), at: place);
        }

        Chain chain = rig.Chain(joints[0], joints[^1]);
        var parts = rig.Group(Snake($"{TLimb.Stem} {side} group")).Under(holder).PlacedAt(torso.Steer);
        _ = rig.Drive(parts).ByMatrix(torso.Steer);
        var (ik, goal) = (chain.Copy("ik").Under(parts), rig.Control(Snake($"{TLimb.Stem} {side}")).Under(torso.Steer).PlacedAt(chain.Tip).Lock(TLimb.Locked));
        rig.TwoBone(ik).Reach(goal);
        if (!TLimb.HasTurns)
        {
            foreach (var joint in chain)
                rig.Drive(joint).ByChannels(ik.Of(joint));
            return;
        }

        var fk = chain.Copy("fk").Under(parts);
        _ = chain.Aggregate<Joint, Node>(torso.Steer, (higher, joint) =>
        {
            var turn = rig.Control(Snake($"turn {joint}")).Under(higher).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(fk.Of(joint)).ByChannels(turn);
            return turn;
        });
        Weight glide = goal.Switch("fk");
        rig.Blend(chain).From(ik, glide.Inverse).From(fk, glide);
    }

    protected static string Snake(SnakeHandler name) => name.ToString();
}

internal class PouchedBird(RigDraft rig, string name) : Bird(rig, name)
{
    public required float PouchSize { get; init; }

    public override LongTorso Grow()
    {
        var joint = Rig.Skeleton(Name).Root("body", at: new(0, 0.55f, 0));
        var steer = Rig.Control(Snake($"{Name} body")).PlacedAt(joint);
        Rig.Drive(joint).ByChannels(steer);
        (Joint Bone, Control Turn) last = (joint, steer);
        ReadOnlySpan<(float, float)> steps = [(0.1f, 0.2f), (0.16f, 0.02f), (0.15f, -0.06f), (0.1f, 0.08f)];
        foreach (var (i, (y, z)) in steps.ToArray().Index())
        {
            var bone = last.Bone.Child(i == steps.Length - 1 ? "head" : Snake($"neck {i + 1:D2}"), at: new(0, y, z));
            var turn = Rig.Control(Snake($"turn {bone}")).Under(last.Turn).PlacedAt(bone).Lock(Channels.Move);
            Rig.Drive(bone).ByChannels(turn);
            last = (bone, turn);
        }

        return new(joint, steer, last.Turn, last.Bone);
    }

    public void Pouch(LongTorso torso)
    {
        var jaw = torso.HeadJoint.Child("jaw", at: new(0, -0.02f, 0.08f));
        var sac = jaw.Child("sac", at: new(0, -PouchSize / 4, PouchSize / 2));
        var open = Rig.Control(Snake($"open {jaw}")).Under(torso.Head).PlacedAt(jaw).LimitTurn(Axis.X, 0, 55);
        Rig.Drive(jaw).ByChannels(open);
        Rig.Drive(sac).ByChannels(Rig.Control(Snake($"fill {sac}")).Under(open).PlacedAt(sac).Unlock(Channels.Scale)).WithScale();
    }
}

/// <summary>Turns the spaces of an interpolated name into underscores.</summary>
[InterpolatedStringHandler]
internal readonly ref struct SnakeHandler(int literalLength, int formattedCount)
{
    private readonly StringBuilder text = new(literalLength + (8 * formattedCount));

    public void AppendLiteral(string literal) => text.Append(literal.Replace(' ', '_'));

    public void AppendFormatted<T>(T value, string? format = null) =>
        text.Append(value is IFormattable formattable ? formattable.ToString(format, null) : value?.ToString());

    public void AppendFormatted(Side side) => text.Append(side);

    public override string ToString() => text.ToString();
}
