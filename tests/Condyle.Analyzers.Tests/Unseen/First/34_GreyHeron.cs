using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;
using static Unseen.First.R34.Bone;

namespace Unseen.First.R34;

/// <summary>The heron at the end of the pier: a tree of bones as an algebraic type, folded once to declare it and once to rig it.</summary>
public sealed class GreyHeron : IRigDefinition
{
    private static readonly Bone Heron =
        Fork("body", (0, 0.95f, 0), [
            Neck(["neck_low", "neck_mid", "neck_high", "head"], (0, 0.14f, 0.05f)),
            .. from side in Side.Both
               from limb in new[]
               {
                   Limb($"hip_{side}", (0.07f * side.Sign, -0.05f, 0), [($"ankle_{side}", (0, -0.4f, -0.12f)), ($"foot_{side}", (0, -0.45f, 0.1f))]),
                   Limb($"wing_{side}", (0.1f * side.Sign, 0.1f, 0), [
                       ($"bow_{side}", (0.35f * side.Sign, 0.1f, -0.1f)),
                       ($"tip_{side}", (0.5f * side.Sign, 0, 0.1f)),
                   ]),
               }
               select limb,
            Leaf("tail", (0, 0, -0.25f)),
        ]);

    public void Define(RigDraft rig)
    {
        Checked(Heron)
            .Bind(bone => bone.Names().GroupBy(name => name).Where(twice => twice.Skip(1).Any()).Select(twice => twice.Key).ToList() is [var clash, ..]
                ? Result<Bone>.Bad($"'{clash}' twice")
                : Result<Bone>.Good(bone))
            .Then(
                bad: message => throw new FormatException(message),
                good: bone => Declare(rig.Skeleton("grey_heron"), bone).Map(Rigged(rig, rig.Group("systems_group"))));
    }

    private static Result<Bone> Checked(Bone bone) => bone switch
    {
        { Name: "" } => Result<Bone>.Bad("a bone without a name"),
        LimbBone { Below: not [_, _] } => Result<Bone>.Bad($"{bone.Name} doesn't have two bones"),
        ForkBone fork => fork.Branches.Select(Checked).FirstOrDefault(result => !result.IsGood, Result<Bone>.Good(bone)),
        _ => Result<Bone>.Good(bone),
    };

    private static Declared Declare(Skeleton skeleton, Bone bone)
    {
        return Below(bone, place => skeleton.Root(bone.Name, at: place));

        static Declared Below(Bone bone, Func<Vector3, Joint> make) => make(bone.Place) is var joint
            ? bone switch
            {
                ForkBone fork => new(bone, [joint], [.. fork.Branches.Select(branch => Below(branch, place => joint.Child(branch.Name, at: place)))]),
                LimbBone { Below: [var middle, var tip] } when joint.Child(middle.Name, at: V(middle.At)) is var knee =>
                    new(bone, [joint, knee, knee.Child(tip.Name, at: V(tip.At))], []),
                _ => new(bone, [joint], []),
            }
            : throw new InvalidOperationException();
    }

    private static Func<Declared, Control> Rigged(RigDraft rig, Group systems)
    {
        return top => Walk(null, top);

        Control Walk(Control? above, Declared declared) => declared switch
        {
            { Bone: LimbBone limb, Joints: [var root, _, var tip] } =>
                Reaching(above ?? throw new InvalidOperationException("A limb needs a body."), limb, rig.Chain(root, tip)),
            { Bone: var bone, Joints: [var joint, ..], Branches: var branches } => Turning(above, bone, joint) switch
            {
                var control when branches is [] => control,
                var control => branches.Aggregate(control, (mine, branch) => (Mine: mine, Done: Walk(mine, branch)).Mine),
            },
            _ => throw new InvalidOperationException(declared.Bone.Name),
        };

        Control Turning(Control? above, Bone bone, Joint joint)
        {
            var control = above is { } higher ? rig.Control($"turn_{bone.Name}").Under(higher).Lock(Channels.Move) : rig.Control("heron");
            rig.Drive(joint).ByChannels(control.PlacedAt(joint));
            return control;
        }

        Control Reaching(Control above, LimbBone limb, Chain chain)
        {
            var holder = rig.Group($"{limb.Name}_group").Under(systems).PlacedAt(above);
            rig.Drive(holder).ByMatrix(above);
            var ik = chain.Copy("ik").Under(holder);
            var goal = rig.Control($"reach_{chain.Tip}").Under(above).PlacedAt(chain.Tip);
            rig.TwoBone(ik).Reach(goal).Face(rig.Control($"face_{chain[1]}").Under(above).PlacedAt(ik.PolePoint(0.3f)));
            var sources = Enumerable.Range(0, chain.Count).Select(index => ik.Of(chain[index]));
            return chain.Zip(sources, (to, from) => rig.Drive(to).ByChannels(from)).ToList() is [_, ..] ? goal : above;
        }
    }
}

internal sealed record Declared(Bone Bone, Joint[] Joints, Declared[] Branches)
{
    public TResult Map<TResult>(Func<Declared, TResult> map) => map(this);
}

internal abstract record Bone(string Name, Vector3 Place)
{
    public static Vector3 V((float X, float Y, float Z) at) => new(at.X, at.Y, at.Z);

    public static Bone Leaf(string name, (float, float, float) at) => new LeafBone(name, V(at));

    public static Bone Fork(string name, (float, float, float) at, IEnumerable<Bone> branches) => new ForkBone(name, V(at), [.. branches]);

    public static Bone Limb(string name, (float, float, float) at, (string, (float, float, float))[] below) => new LimbBone(name, V(at), below);

    // A run of bones at equal steps, built from the head of the list down.
    public static Bone Neck(ReadOnlySpan<string> names, (float, float, float) step) => names switch
    {
        [var last] => Leaf(last, step),
        [var first, .. var rest] => Fork(first, step, [Neck(rest, step)]),
        [] => throw new ArgumentException("A neck has at least one bone.", nameof(names)),
    };

    public IEnumerable<string> Names() => this switch
    {
        ForkBone fork => fork.Branches.SelectMany(branch => branch.Names()).Prepend(Name),
        LimbBone limb => limb.Below.Select(bone => bone.Name).Prepend(Name),
        _ => [Name],
    };
}

internal sealed record LeafBone(string Name, Vector3 Place) : Bone(Name, Place);

internal sealed record ForkBone(string Name, Vector3 Place, Bone[] Branches) : Bone(Name, Place);

internal sealed record LimbBone(string Name, Vector3 Place, (string Name, (float, float, float) At)[] Below) : Bone(Name, Place);

internal readonly record struct Result<T>(bool IsGood, T? Value, string Message)
{
    public static Result<T> Good(T value) => new(true, value, "");

    public static Result<T> Bad(string message) => new(false, default, message);

    public Result<TNext> Bind<TNext>(Func<T, Result<TNext>> next) => IsGood ? next(Value!) : Result<TNext>.Bad(Message);

    public TResult Then<TResult>(Func<string, TResult> bad, Func<T, TResult> good) => IsGood ? good(Value!) : bad(Message);
}
